import { requireNumber } from '../basis/index.ts';
import {
  type CapacityStep,
  capacityFor,
  capacityTrace,
  freshCapacity,
  REST_RECOVERY_PER_SECOND,
  repCost,
  restCapacity,
} from '../capacity/index.ts';
import { shareForReps } from '../strength/index.ts';
import type { PairForecast, PairInput, PairRefusal } from './Pair.ts';
import { paceCurve } from './paceCurve.ts';
import { pairCautions } from './pairCautions.ts';
import { pairRefusals } from './pairRefusals.ts';
import { pairRules } from './pairRules.ts';
import { pairSources } from './pairSources.ts';
import { secondLift } from './secondLift.ts';

/** A pair with what to load for its second lift, or why it is not offered. */
export type PairPlan =
  | ({ readonly kind: 'allowed' } & PairForecast)
  | { readonly kind: 'refused'; readonly refusals: readonly PairRefusal[] };

/**
 * An isolation set and then a compound lift for the same muscle: what the second lift will be.
 *
 * The isolation set lowers its muscles on the capacity state, the transition gives part of it
 * back, and the compound lift's capacity is the share-weighted mean of its muscles, of whose fall a
 * part shows (`pairRules.transfer`). The load for the usual repetitions and the repetitions with
 * the usual load follow from the rep curve. That the second lift gets worse is sure; how much is a
 * band. Pairs add no proven size or strength.
 *
 * @throws RangeError for repetitions outside 1 to 100, repetitions left outside 0 to 10, paces
 *   outside 1 to 60 s, a transition outside 0 to 600 s, a usual load of 0 or less.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { planPair } from '@windlass/core/pairing';
 * const extension = {
 *   id: 'leg-extension',
 *   name: 'Leg extension',
 *   direct: { vasti: 0.7, 'rectus-femoris': 0.3 },
 *   indirect: {},
 *   span: 'isolation',
 *   endurance: 'leg-isolation',
 * } as const;
 * const press = {
 *   id: 'leg-press',
 *   name: 'Leg press',
 *   direct: { vasti: 0.5, glutes: 0.3 },
 *   indirect: { 'adductor-magnus': 0.2 },
 *   span: 'compound',
 *   endurance: 'leg-press',
 * } as const;
 * const plan = planPair({
 *   target: ['vasti', 'rectus-femoris'],
 *   isolation: { exercise: extension, reps: 10, repsLeft: 0, secondsPerRep: 4 },
 *   compound: { exercise: press, usual: { load: kg(160), reps: 10 }, secondsPerRep: 4 },
 *   transitionSeconds: 10,
 * });
 * plan.kind; // 'allowed'
 * plan.kind === 'allowed' && plan.loadShare.high < 1; // true
 * ```
 */
export function planPair(input: PairInput): PairPlan {
  requirePair(input);
  const { isolation, compound, transitionSeconds, start = freshCapacity() } = input;
  const steps = pairSteps(input);
  const shares = { ...compound.exercise.direct, ...compound.exercise.indirect };
  const { end } = capacityTrace({ shares, steps, start });
  const refusals = pairRefusals(input, end);
  if (refusals.length > 0) return { kind: 'refused', refusals };
  const seconds = isolation.reps * isolation.secondsPerRep + transitionSeconds;
  const without = capacityFor(restCapacity(start, seconds), shares);
  const drop = without - capacityFor(end, shares);
  const recovered = -Math.expm1(-REST_RECOVERY_PER_SECOND * transitionSeconds);
  return {
    kind: 'allowed',
    ...secondLift(compound, without, drop),
    capacity: { without, with: without - pairRules.transfer.likely * drop },
    recovered,
    cautions: pairCautions(input, recovered),
    steps,
    sources: pairSources,
  };
}

/** The isolation set and the way to the compound lift. */
function pairSteps({ isolation, transitionSeconds }: PairInput): readonly CapacityStep[] {
  const { reps, repsLeft, secondsPerRep, exercise } = isolation;
  const curve = paceCurve(isolation);
  const costPerRep = repCost({ intensity: shareForReps(reps + repsLeft, curve), ...curve });
  const shares = { ...exercise.direct, ...exercise.indirect };
  return [
    { kind: 'reps', shares, reps, secondsPerRep, costPerRep },
    { kind: 'rest', seconds: transitionSeconds },
  ];
}

function requirePair({ isolation, compound, transitionSeconds }: PairInput): void {
  requireNumber('planPair', 'isolation.reps', isolation.reps, 1, 100);
  requireNumber('planPair', 'isolation.repsLeft', isolation.repsLeft, 0, 10);
  requireNumber('planPair', 'isolation.secondsPerRep', isolation.secondsPerRep, 1, 60);
  requireNumber('planPair', 'compound.usual.reps', compound.usual.reps, 1, 100);
  requireNumber('planPair', 'compound.usual.load', compound.usual.load, 1);
  requireNumber('planPair', 'compound.secondsPerRep', compound.secondsPerRep, 1, 60);
  requireNumber('planPair', 'transitionSeconds', transitionSeconds, 0, 600);
}
