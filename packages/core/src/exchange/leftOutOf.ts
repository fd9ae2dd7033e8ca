import type { Exercise } from '../anatomy/index.ts';
import type { ExchangeReason, LeftOut } from './Exchange.ts';
import { setUpsWithin } from './setUpsWithin.ts';

/** How many are named: enough to answer "why not that one?". */
const NAMED = 8;

/**
 * The nearest exercises that no set-up takes past the filters, each with its reasons. What is missing in the place
 * is left unsaid: only what this person's limits rule out is named.
 */
export function leftOutOf(
  candidates: readonly Exercise[],
  nearness: (exercise: Exercise) => number,
  against: (exercise: Exercise) => readonly ExchangeReason[],
): readonly LeftOut[] {
  return candidates
    .filter((exercise) => setUpsWithin(exercise, against).length === 0)
    .map((exercise) => ({ exercise, reasons: against(exercise), near: nearness(exercise) }))
    .filter(({ reasons }) => !reasons.some(({ code }) => code.endsWith('-here')))
    .sort((a, b) => b.near - a.near || (a.exercise.id < b.exercise.id ? -1 : 1))
    .slice(0, NAMED)
    .map(({ exercise, reasons }) => ({ exercise: exercise.id, reasons }));
}
