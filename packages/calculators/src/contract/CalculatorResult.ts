import type { Texts } from '../fields/Field.ts';
import type { Headline } from './Answer.ts';

/** What an embedded calculator tells the page around it. Plain data, ready to be sent or kept. */
export interface CalculatorResult {
  /** Which calculator: `warm-up-ramp`. */
  readonly calculator: string;
  /** The whole state, ready for the `query` attribute and for the address of its page. */
  readonly query: string;
  /** What stands in the fields, by name: `{ work: '82.5kg', possible: '8' }`. */
  readonly texts: Texts;
  /** `none`: there is no number for these values, and `says` tells why. */
  readonly kind: 'result' | 'none' | 'unreadable';
  /** The number, as it is shown and exactly; `null` where there is none. */
  readonly headline: Headline | null;
  /** Where the number probably lies; `null` for what is counted and not predicted. */
  readonly band: ResultBand | null;
  /** How far the number can be trusted, or why there is none. */
  readonly says: string;
  /** The cautions that apply, the gravest first. Show them where you show the number. */
  readonly cautions: readonly ResultCaution[];
  /** What cannot be read, each with what would be right. */
  readonly problems: readonly ResultProblem[];
}

export interface ResultBand {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** The share of cases that it holds, such as 0.8. */
  readonly level: number;
  readonly unit: string;
}

export interface ResultCaution {
  readonly id: string;
  readonly level: 'note' | 'caution' | 'stop';
  readonly what: string;
}

export interface ResultProblem {
  /** Name of the field. */
  readonly field: string;
  readonly code: string;
  /** What would be right. */
  readonly message: string;
}
