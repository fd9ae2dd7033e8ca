import type { Band } from '../basis/index.ts';
import type { BeliefState, LearnSetting } from './evidence/BeliefState.ts';
import { beliefOf } from './evidence/beliefs.ts';
import { countBand } from './evidence/countBand.ts';
import { countChances } from './evidence/countChances.ts';
import { learnSession } from './evidence/learnSession.ts';
import { moveToDay } from './evidence/moveToDay.ts';
import { USUAL_CELLS } from './evidence/planeAround.ts';
import { requireSets } from './evidence/requireSets.ts';
import { sessionsOf } from './evidence/sessionsOf.ts';
import { slipChance } from './evidence/slipChance.ts';
import { startingState } from './evidence/startingState.ts';
import { surpriseOf } from './evidence/surpriseOf.ts';
import { momentsOf } from './grid/momentsOf.ts';
import type { PerformedSet } from './PerformedSet.ts';
import type { StrengthEvidence } from './strengthFrom.ts';

/** What one set told when it was done. */
export interface SetContribution {
  readonly set: PerformedSet;
  /** Repetitions to failure that were expected from the sessions before. */
  readonly expected: Band;
  /** Probability of an outcome at least as far out, by that expectation; small is surprising. */
  readonly surprise: number;
  /** By how much of its width the set narrowed the belief about the one-rep max; below 0 it widened. */
  readonly narrowed: number;
  /** Probability that the set was loaded, counted or noted wrongly. */
  readonly slipChance: number;
  /** True when the set disagrees with the others: its slip is at least five times as likely as usual. */
  readonly disagrees: boolean;
}

/** Five times the one set in twenty that is taken as wrong before anything is seen. */
const DISAGREES_FROM = 0.25;

/**
 * What each set contributed to a belief, in the order of the days, and which sets disagree.
 *
 * The sets are learned as by `strengthFrom`; every set is compared with what the earlier sessions
 * let expect, and with the belief that its session would have left without it. None without sets.
 *
 * @throws RangeError as `strengthFrom` does.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { generalCurve, priorFor, setContributions } from '@windlass/core/strength';
 * const end = { kind: 'failure' } as const;
 * const told = setContributions({
 *   sets: [
 *     { load: kg(100), reps: 5, end, day: 0, secondsPerRep: 3 },
 *     { load: kg(60), reps: 5, end, day: 0, secondsPerRep: 3 },
 *   ],
 *   prior: priorFor(generalCurve),
 *   today: 0,
 * });
 * told.some(({ disagrees }) => disagrees); // true
 * ```
 */
export function setContributions(evidence: StrengthEvidence): readonly SetContribution[] {
  const { sets, prior, today, trained = false, cells = USUAL_CELLS } = evidence;
  requireSets('setContributions', sets, Number.NEGATIVE_INFINITY, today);
  const setting = { alpha: prior.alpha, trained, cells };
  let state = startingState(prior, sets, today, cells);
  const told: SetContribution[] = [];
  for (const session of sessionsOf(sets)) {
    if (state === undefined) break;
    const opened = moveToDay(state, session.day, setting);
    const learned = learnSession(opened.before, session.sets, prior.alpha, cells);
    state = { ...opened, ...learned, sets: session.sets };
    for (const set of session.sets) told.push(contribution(set, opened, state, setting));
  }
  return told;
}

function contribution(
  set: PerformedSet,
  opened: BeliefState,
  learned: BeliefState,
  { alpha, cells }: LearnSetting,
): SetContribution {
  const { lnMax, lnKappa, chances } = beliefOf(opened.today);
  const expected = countChances(set, { columns: lnMax, rows: lnKappa }, chances, alpha);
  const others = learned.sets.filter((one) => one !== set);
  const without = others.length === 0 ? opened : learnSession(opened.before, others, alpha, cells);
  const slip = slipChance(set, learned.today, alpha);
  return {
    set,
    expected: countBand(expected, 0.8),
    surprise: surpriseOf(set, expected),
    narrowed: 1 - momentsOf(learned.usual).columns.sd / momentsOf(without.usual).columns.sd,
    slipChance: slip,
    disagrees: slip >= DISAGREES_FROM,
  };
}
