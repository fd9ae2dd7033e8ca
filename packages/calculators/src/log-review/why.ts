import { toKg } from '@windlass/core/load';
import { topSets } from '@windlass/core/progress';
import { oneRepMaxKg } from '@windlass/core/strength';
import type { Why } from '../contract/Answer.ts';
import { inUnit } from '../shared/inUnit.ts';
import { loadWords } from '../shared/loadWords.ts';
import { formatDate } from '../ui/formatDate.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import type { LogReviewResult } from './compute.ts';
import type { LogReviewInput } from './fields.ts';
import { said } from './words.ts';

/** The last session, what is believed, and the rule that gave the load. */
export function whyNext(
  input: LogReviewInput,
  { question, beliefs, advice }: LogReviewResult,
): Why {
  const { show, window } = input;
  const last = question.sessions.at(-1);
  const top = last && topSets(last);
  const max = beliefs.next && oneRepMaxKg(beliefs.next);
  const kg = (value: number) => `${formatNumber(inUnit(value, show), 1)} ${show}`;
  return {
    formula: said.formula,
    steps: [
      ...(last && top
        ? [
            said.lastSession(
              formatDate(last.date),
              loadWords(top.shown, show),
              top.sets.map(({ reps }) => reps).join(', '),
              window.low,
              window.high,
            ),
          ]
        : []),
      ...(max ? [said.believed(kg(max.low), kg(max.high))] : []),
      said.rule(advice.says),
      said.moved(loadWords(advice.load.shown, show), kg(toKg(advice.load.load))),
    ],
    restsOn: said.restsOn,
  };
}
