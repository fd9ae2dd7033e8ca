import { progressRuleSources } from '@windlass/core/progress';
import { strengthDrift } from '@windlass/core/strength';
import type { Certainty, Headline } from '../contract/Answer.ts';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { HEALTH_NOT_ASKED } from '../shared/cautions.ts';
import { loadFace, loadWords } from '../shared/loadWords.ts';
import { formatDate } from '../ui/formatDate.ts';
import { computeLogReview, type LogReviewResult } from './compute.ts';
import { LogReviewDetails } from './details.tsx';
import { fields, groups, type LogReviewInput } from './fields.ts';
import { liftName } from './liftName.ts';
import { nextOf } from './nextOf.ts';
import { repsAt } from './repsAt.ts';
import { snippet } from './snippet.ts';
import { LogReviewView } from './view.tsx';
import { whyNext } from './why.ts';
import { said } from './words.ts';

export const logReview = defineCalculator({
  id: 'log-review',
  title: 'Log review',
  question: 'What does this log say, and what next?',
  fields,
  groups,
  compute: computeLogReview,
  headline: headlineOf,
  certainty: certaintyOf,
  why: whyNext,
  cautions: (_, { advice }) => [...(advice.comeback?.cautions ?? []), HEALTH_NOT_ASKED],
  sources: (_, { beliefs, advice }) => {
    const { stepPercent, sessionsAtTop, missesForStall, layoffDays } = progressRuleSources;
    return [
      stepPercent,
      ...[sessionsAtTop, missesForStall, layoffDays].map((source, place) => ({
        ...source,
        id: `${source.id}-${place}`,
      })),
      ...beliefs.curve.sources,
      ...(advice.kind === 'come-back' ? strengthDrift.sources : []),
    ];
  },
  next: nextOf,
  snippet,
  view: (input, result) => LogReviewView({ input, result }),
  details: (input, result) => LogReviewDetails({ input, result }),
});

function headlineOf(
  { on, show }: LogReviewInput,
  { lift, loads, advice }: LogReviewResult,
): Headline {
  const { value, unit, exact } = loadFace(advice.load.shown, show);
  const isMoved =
    loads.kind === 'loads' && loads.counts !== 'total' && advice.load.load !== advice.load.shown;
  return {
    label: said.headline(liftName(lift), formatDate(on)),
    value,
    unit: said.unitTimes(unit, advice.aim),
    ...(isMoved ? { also: said.toMove(loadWords(advice.load.load, show)) } : {}),
    exact,
  };
}

function certaintyOf(_: LogReviewInput, result: LogReviewResult): Certainty {
  const says = `${said.kinds[result.advice.kind]} ${result.advice.says}`;
  const reps = repsAt(result);
  return reps
    ? { kind: 'band', band: reps, unit: said.repsToFailure, says }
    : { kind: 'exact', says };
}
