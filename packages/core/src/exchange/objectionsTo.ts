import { type Exercise, exercises as everyExercise } from '../anatomy/index.ts';
import type { Limits } from '../safety/index.ts';
import type { ExchangeReason } from './Exchange.ts';
import { fromLimits } from './fromLimits.ts';
import { readClinicianList } from './readClinicianList.ts';
import { unreadWords } from './unreadWords.ts';

/**
 * Why a person's limits keep an exercise out of a plan: the clinician's list with its families,
 * positions to avoid, joints that wait for a clinician, supports and hands out of use.
 *
 * @param exercise with its set-up applied.
 * @param limits from `limitsFor`.
 * @param list where names on the clinician's list are looked up.
 * @returns every reason; empty when the limits leave the exercise open. A word on the list that
 *   nothing here answers to is a reason against every exercise until somebody has explained it.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { objectionsTo } from '@windlass/core/exchange';
 * import { limitsFor } from '@windlass/core/safety';
 * const limits = limitsFor({ clinician: { by: 'physician', notAllowed: ['deadlifts'] } });
 * const found = findExercise('good-morning');
 * found.kind === 'found' && objectionsTo(found.exercise, limits)[0]?.code; // 'on-clinicians-list'
 * ```
 */
export function objectionsTo(
  exercise: Exercise,
  limits: Limits,
  list: readonly Exercise[] = everyExercise,
): readonly ExchangeReason[] {
  const filter = readClinicianList(limits.notAllowed, list);
  const listed = filter.reasonAgainst(exercise);
  return [
    ...filter.unread.map((words) => ({ code: 'list-not-read', words: unreadWords(words) })),
    ...(listed ? [listed] : []),
    ...fromLimits(exercise, limits),
  ];
}
