import type { TrainedSets } from '@windlass/core/recovery';
import { trainedLifts } from '../precomputed/trainedLifts.ts';
import { exerciseOf } from '../shared/exerciseFields.ts';
import type { NextDateInput } from './fields.ts';

export type EndId = '0' | '1' | '2' | '3' | '4' | 'past1' | 'past2' | 'past3';
export type FamiliarId = 'used' | 'once' | 'first';

/** How sets ended, as recovery counts it. */
const ENDS: Readonly<Record<EndId, Pick<TrainedSets, 'repsInReserve' | 'stagesPastFailure'>>> = {
  '0': {},
  '1': { repsInReserve: 1 },
  '2': { repsInReserve: 2 },
  '3': { repsInReserve: 3 },
  '4': { repsInReserve: 4 },
  past1: { stagesPastFailure: 1 },
  past2: { stagesPastFailure: 2 },
  past3: { stagesPastFailure: 3 },
};

/** Days since like sessions: `familiar` is twice a week for six weeks, `once` a week ago. */
export const LIKE_SESSIONS: Readonly<Record<FamiliarId, readonly number[]>> = {
  used: [4, 7, 11, 14, 18, 21, 25, 28, 32, 35, 39, 42],
  once: [7],
  first: [],
};

/** What is said of one row, besides its exercise. */
export type WorkPart = Omit<TrainedSets, 'exercise'>;

/** The rows without their exercises, as code writes them. */
export function workParts({ work, status }: NextDateInput): readonly WorkPart[] {
  return work.map(({ sets, end, lowering, familiar }) => ({
    sets,
    ...ENDS[end],
    ...(lowering === 'heavy' && { loweringHeavy: true }),
    ...((familiar !== 'used' || status === 'new') && {
      likeSessionsDaysAgo: LIKE_SESSIONS[familiar],
    }),
  }));
}

/** The rows as recovery takes them. */
export function workOf(input: NextDateInput): readonly TrainedSets[] {
  return workParts(input).map((part, place) => ({
    ...part,
    exercise: exerciseOf(trainedLifts, input.work[place]?.exercise ?? ''),
  }));
}

/** What the next session trains: one set of each, for its muscles alone. */
export function nextWork({ next }: NextDateInput): readonly TrainedSets[] {
  return next.map(({ exercise }) => ({ exercise: exerciseOf(trainedLifts, exercise), sets: 1 }));
}
