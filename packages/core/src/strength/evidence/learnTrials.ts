import { toKg } from '../../load/index.ts';
import type { FindingQuestion, FindingReport, FindingTry } from '../FindingStep.ts';
import { findingRules } from '../findingRules.ts';
import type { HasLoad } from '../LoadChance.ts';
import type { PerformedSet, SetEnd } from '../PerformedSet.ts';
import { priorFor } from '../priorFor.ts';
import type { StrengthPosterior } from '../StrengthPosterior.ts';
import { strengthFrom } from '../strengthFrom.ts';

/** What the trial sets say, starting from next to nothing; all on day 0. */
export function learnTrials<C extends HasLoad>(question: FindingQuestion<C>): StrengthPosterior {
  const { tries, curve, secondsPerRep } = question;
  const { times, sd } = findingRules.firstMax;
  const sets = tries.map(
    ({ load, reps, report }): PerformedSet => ({
      load,
      reps,
      end: endOf(report),
      day: 0,
      secondsPerRep,
    }),
  );
  const firstKg = toKg((tries[0] as FindingTry).load);
  return strengthFrom({
    sets,
    prior: priorFor(curve, { kg: firstKg * times, doubt: sd }),
    today: 0,
  }) as StrengthPosterior;
}

function endOf(report: FindingReport): SetEnd {
  if (report === 'far-too-easy') return { kind: 'more', atLeast: findingRules.farTooEasy };
  if (report === 'failed' || report === 'form-broke') return { kind: 'failure' };
  return { kind: 'reserve', repsLeft: report.repsLeft };
}
