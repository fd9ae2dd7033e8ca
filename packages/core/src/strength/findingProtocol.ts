import { requireNumber } from '../basis/index.ts';
import { learnTrials } from './evidence/learnTrials.ts';
import { nextTrial } from './evidence/nextTrial.ts';
import type { FindingQuestion, FindingStep } from './FindingStep.ts';
import { findingRules } from './findingRules.ts';
import { forecastReps } from './forecastReps.ts';
import type { HasLoad, LoadChance } from './LoadChance.ts';
import { loadForWindow } from './loadForWindow.ts';

/**
 * How to find a first load with no history: the next trial set, or the load once it is found.
 *
 * The first set is the lightest load, whoever the lifter is: nothing is taken from body weight, age
 * or sex, and no maximum is tried. After each set the belief learns from the repetitions and from
 * what was left; the next load is the heaviest that stays under the window's load, under the step
 * allowed after such a report, and very probably short of failure. After poor form or failure it
 * goes down. It ends when the best load lands in the window often enough, or the sets are used up.
 *
 * @throws RangeError for more than 4 trial sets, or a window or pace out of range.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { enduranceCurves, findingProtocol } from '@windlass/core/strength';
 * const step = findingProtocol({
 *   choices: [5, 10, 15, 20, 25].map((value) => ({ load: kg(value) })),
 *   window: { minReps: 10, maxReps: 12 },
 *   secondsPerRep: 4,
 *   curve: enduranceCurves.pull,
 *   tries: [],
 * });
 * step.kind === 'try' && step.because; // 'start-light'
 * ```
 */
export function findingProtocol<C extends HasLoad>(question: FindingQuestion<C>): FindingStep<C> {
  const { window, secondsPerRep, tries, startAt = 0 } = question;
  const { trialReps, stopWithLeft, enough, carefulBefore, beyondTried } = findingRules;
  const mostTries = question.mostTries ?? findingRules.mostTries;
  requireNumber('findingProtocol', 'mostTries', mostTries, 1, 4);
  const choices = question.choices.filter(({ load }) => load > 0).sort((a, b) => a.load - b.load);
  const lightest = choices[0];
  if (lightest === undefined) return { kind: 'no-loads' };
  const reps = Math.min(trialReps[1], Math.max(trialReps[0], window.minReps));
  if (tries.length === 0) {
    const choice = choices.findLast(({ load }) => load <= startAt) ?? lightest;
    return { kind: 'try', choice, reps, stopWithLeft, because: 'start-light' };
  }
  const posterior = learnTrials(question);
  const failed = tries.filter(({ report }) => report === 'failed' || report === 'form-broke');
  const ceiling = Math.min(...failed.map(({ load }) => load));
  const below = choices.filter(({ load }) => load < ceiling);
  const answer = loadForWindow({ posterior, choices: below, window, secondsPerRep });
  if (answer.kind === 'no-loads') return { kind: 'all-too-heavy', lightest };
  if (answer.kind === 'none-near' && answer.reason === 'all-too-heavy') {
    return { kind: 'all-too-heavy', lightest };
  }
  const tried = Math.max(...tries.map(({ load }) => load));
  const reachable = answer.all.filter(({ choice }) => choice.load <= tried * beyondTried);
  const best = answer.kind === 'found' ? answer.best : undefined;
  if (
    best !== undefined &&
    posterior.binding === 'both-sides' &&
    best.inside >= enough &&
    reachable.includes(best)
  ) {
    return { kind: 'found', load: best, posterior };
  }
  const failing = (choice: C) =>
    forecastReps(posterior, { load: choice.load, secondsPerRep })
      .chances.slice(0, reps)
      .reduce((sum, chance) => sum + chance, 0);
  // not all are too heavy, so that one that fits or is too light is there
  const goal = (best ?? answer.lighter) as LoadChance<C>;
  const next = nextTrial(below, question, goal.choice.load, failing);
  if (next !== undefined && tries.length < mostTries) {
    return { kind: 'try', ...next, reps, stopWithLeft };
  }
  const load = reachable.findLast(({ before }) => before <= carefulBefore) ?? answer.all[0];
  return { kind: 'start-and-learn', load: load as LoadChance<C>, posterior };
}
