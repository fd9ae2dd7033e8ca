import type { LogField } from '@windlass/core/progress';
import { said } from './words.ts';

/** What a column can hold, in the order it is offered. */
export const LOG_FIELDS = Object.keys(said.holds) as readonly LogField[];

/** What a review cannot do without. */
export const NEEDED = ['date', 'exercise', 'load', 'reps'] as const satisfies readonly LogField[];

/** What each column of a table holds; nothing where it is not read. */
export type HeldColumns = readonly (LogField | '')[];

/** The text of what columns hold, and back. A word that is no field is not read. */
export function heldText(held: HeldColumns): string {
  return held.join(',');
}

export function heldOf(text: string): HeldColumns {
  return text.split(',').map((word) => LOG_FIELDS.find((field) => field === word.trim()) ?? '');
}
