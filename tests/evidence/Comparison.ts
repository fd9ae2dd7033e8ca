/**
 * One published data set, or several of one kind, against the library. From these come the tests,
 * the printed report and the page of the site.
 */
export interface Comparison {
  /** Name of its file in kebab case. */
  readonly id: string;
  readonly title: string;
  /** What stands against what. */
  readonly compares: string;
  /** Data sets of `tests/reference` that its rows are read from. */
  readonly tables: readonly string[];
  /** How far a row may be off, and why so far. */
  readonly tolerance: { readonly rule: string; readonly reason: string };
  /** What predicted and observed are measured in; none where only orders are compared. */
  readonly unit?: string;
  /** A logarithmic picture, for figures that span several powers of two. */
  readonly logarithmic?: true;
  readonly rows: () => readonly (Figure | Order)[];
  /** What else a reader should know, from the counted figures. */
  readonly note?: (counted: readonly Figure[]) => string;
}

interface Row {
  /** What the row is about, as a reader finds it in the table. */
  readonly label: string;
  /** Why the row is shown and not counted. */
  readonly aside?: string;
  /** Why the library misses it. */
  readonly miss?: string;
  /** A constant of the library was chosen on this row, so that meeting it foretells nothing. */
  readonly fitted?: true;
}

/** A published figure, or published bounds, and the library's figure. */
export interface Figure extends Row {
  readonly predicted: number;
  /** None where only bounds were published. */
  readonly observed: number | undefined;
  /** Predictions from here to there are inside the tolerance. */
  readonly allowed: readonly [low: number, high: number];
}

/** A published order or direction, and whether the library says the same. */
export interface Order extends Row {
  /** What was found. */
  readonly found: string;
  /** What the library gives. */
  readonly given: string;
  readonly holds: boolean;
}

/** `observed` give or take. */
export function around(observed: number, give: number): Pick<Figure, 'observed' | 'allowed'> {
  return { observed, allowed: [observed - give, observed + give] };
}
