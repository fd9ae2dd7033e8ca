/**
 * One thing that is wrong with an input, as data.
 *
 * `message` is a finished English sentence that says what would be right. `code` and `params`
 * are what it was made from, so that an application can say the same in another language.
 */
export interface Problem {
  /** Stable name, folder first: `load.not-a-load`. */
  readonly code: string;
  /** Where in the input, outermost first: `['plates', 2, 'load']`. Empty when the whole input is meant. */
  readonly path: readonly (string | number)[];
  readonly message: string;
  readonly params?: Readonly<Record<string, string | number>>;
  /** What was given, when it can be shown. */
  readonly received?: unknown;
}

/** A value, or what is wrong with the input. Never both, never neither. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A good outcome. */
export function good<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

/** A bad outcome with one problem or several. */
export function bad(...problems: readonly Problem[]): {
  readonly ok: false;
  readonly problems: readonly Problem[];
} {
  return { ok: false, problems };
}
