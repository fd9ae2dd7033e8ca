import type { Load } from '../../load/index.ts';
import type { FindingQuestion, FindingReason } from '../FindingStep.ts';
import { findingRules } from '../findingRules.ts';
import type { HasLoad } from '../LoadChance.ts';

/**
 * The load of the next trial set: the heaviest below the goal that the last report allows and that
 * very probably is not failed. None when nothing moves on from the last.
 *
 * @param choices by load, none as heavy as one that was failed.
 * @param goal the window's load as it is believed.
 * @param failing probability of failing a trial set with a load.
 */
export function nextTrial<C extends HasLoad>(
  choices: readonly C[],
  { tries }: Pick<FindingQuestion<C>, 'tries'>,
  goal: Load,
  failing: (choice: C) => number,
): { readonly choice: C; readonly because: FindingReason } | undefined {
  const last = tries.at(-1);
  if (last === undefined) return undefined;
  const { mostFailing, steps, largeFrom } = findingRules;
  const { load: from, report } = last;
  const allowed = (choice: C) => choice.load <= goal && failing(choice) <= mostFailing;
  if (report === 'failed' || report === 'form-broke') {
    const choice = choices.findLast(allowed) ?? choices[0];
    return choice && { choice, because: 'down' };
  }
  const left = report === 'far-too-easy' ? Number.POSITIVE_INFINITY : report.repsLeft;
  const { factor } = steps.find(({ fromLeft }) => left >= fromLeft) as (typeof steps)[number];
  const up = choices.filter(({ load }) => load > from && load <= from * factor);
  const choice = up.findLast(allowed);
  return (
    choice && { choice, because: choice.load > largeFrom * from ? 'large-step' : 'small-step' }
  );
}
