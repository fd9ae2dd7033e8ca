import type { MuscleId } from '@windlass/core/anatomy';
import { type CapacityState, capacityTrace, restCapacity } from '@windlass/core/capacity';
import { loadFromValue } from '@windlass/core/load';
import { type PairForecast, type PairInput, planPair } from '@windlass/core/pairing';
import { secondsPerRep } from '@windlass/core/tempo';
import type { Computed } from '../contract/Definition.ts';
import { type PairLift, pairLifts } from '../precomputed/pairLifts.ts';
import { exerciseOf } from '../shared/exerciseFields.ts';
import { earlierWork } from './earlierWork.ts';
import type { PairInputs } from './fields.ts';
import { type MuscleLeft, musclesLeft } from './musclesLeft.ts';
import { refusedPair } from './refusedPair.tsx';
import { type Round, roundsAfter } from './roundsAfter.ts';
import { limits, targetOf } from './targets.ts';
import { said } from './words.ts';

export interface PairResult {
  readonly isolation: PairLift;
  readonly compound: PairLift;
  readonly target: readonly MuscleId[];
  readonly question: PairInput;
  readonly forecast: PairForecast;
  readonly rounds: readonly Round[];
  readonly muscles: readonly MuscleLeft[];
}

/** What the compound lift is after the isolation set, in every round, or why the pair is not offered. */
export function computePair(input: PairInputs): Computed<PairResult> {
  const isolation = exerciseOf(pairLifts, input.isolation);
  const compound = exerciseOf(pairLifts, input.compound);
  const target = targetOf(input.target, isolation);
  const paces = [input.isolationTempo, input.compoundTempo].map((tempo) => secondsPerRep(tempo));
  const [first = 0, second = 0] = paces;
  if (paces.some((pace) => pace < 1 || pace > 60)) {
    return { kind: 'none', reason: 'pace', headline: said.noPair, message: said.wrongPace };
  }
  const start = earlierWork(input);
  const question: PairInput = {
    target,
    limiting: limits[input.limit],
    isolation: {
      exercise: isolation,
      reps: input.isolationReps,
      repsLeft: input.repsLeft,
      secondsPerRep: first,
    },
    compound: {
      exercise: compound,
      usual: { load: loadFromValue(input.usualLoad), reps: input.usualReps },
      secondsPerRep: second,
    },
    transitionSeconds: input.between,
    ...(input.earlier === 'yes' && { start }),
  };
  const plan = planPair(question);
  if (plan.kind === 'refused') return refusedPair(input, plan.refusals, target);
  const { steps } = plan;
  const shares = { ...compound.direct, ...compound.indirect };
  const { end } = capacityTrace({ shares, steps, start });
  return {
    kind: 'result',
    result: {
      isolation,
      compound,
      target,
      question,
      forecast: plan,
      rounds: roundsAfter(question, plan, end, input),
      muscles: musclesLeft(compound, restedOnly(start, input, first), end),
    },
  };
}

/** The state at the compound lift if the isolation set had been left out. */
function restedOnly(start: CapacityState, input: PairInputs, pace: number): CapacityState {
  return restCapacity(start, input.isolationReps * pace + input.between);
}
