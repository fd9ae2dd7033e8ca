import type { Band, Source } from '@windlass/core/basis';
import type { Caution } from '@windlass/core/safety';
import type { ComponentChildren } from 'preact';
import type { FieldProblem } from '../fields/FieldProblem.ts';

/** The one number that a calculator answers with. */
export interface Headline {
  /** What the number is: `Load the bar to`. */
  readonly label: string;
  /** As it is read: `82.5`, `6-8`. */
  readonly value: string;
  /** `value` is a name and not a number: it is set smaller and may take two lines. */
  readonly isName?: true;
  readonly unit: string;
  /** The same in other words or another unit: `181.9 lb`. */
  readonly also?: string;
  /** The unrounded figure behind `value`; the last line that the snippet prints. */
  readonly exact: number;
}

/** How far the number can be trusted: a band for what is predicted, a reason for what is counted. */
export type Certainty =
  | { readonly kind: 'band'; readonly band: Band; readonly unit: string; readonly says: string }
  | { readonly kind: 'exact'; readonly says: string };

/** The formula with these numbers in it. */
export interface Why {
  /** The general form, in words or signs. */
  readonly formula: string;
  /** The same with the numbers of this result, one step a line. */
  readonly steps: readonly string[];
  /** What the figures rest on, and where they stop being good. */
  readonly restsOn: string;
}

/** A way on: another calculator with values carried along. */
export interface NextLink {
  readonly calculator: string;
  readonly label: string;
  /** Texts of the other calculator's fields. */
  readonly carry: Readonly<Record<string, string>>;
}

/** A named outcome without a number. What else there is to say stands where a result has it. */
export interface NoAnswer {
  readonly kind: 'none';
  /** Stable name: `bar-heavier-than-target`. */
  readonly reason: string;
  /** What is answered with no; that there is no answer when it is left out. */
  readonly label?: string;
  readonly headline: string;
  readonly message: string;
  readonly cautions?: readonly Caution[];
  readonly sources?: readonly Source[];
  readonly next?: readonly NextLink[];
  readonly view?: () => ComponentChildren;
  readonly details?: () => ComponentChildren;
}

/** A result with everything that is shown with it. */
export interface ShownResult {
  readonly kind: 'result';
  readonly headline: Headline;
  readonly certainty: Certainty;
  readonly why: Why;
  readonly cautions: readonly Caution[];
  readonly sources: readonly Source[];
  readonly next: readonly NextLink[];
  /** TypeScript on the published entries of `@windlass/core` that gives the same number. */
  readonly snippet: string;
  /** The picture, made only when it is shown. */
  readonly view: () => ComponentChildren;
  /** More about the result, below the form; any height. */
  readonly details: () => ComponentChildren;
}

/** Fields whose text cannot be read, each with what would be right. */
export interface Unreadable {
  readonly kind: 'unreadable';
  readonly problems: Readonly<Record<string, readonly FieldProblem[]>>;
}

export type Answer = ShownResult | NoAnswer | Unreadable;
