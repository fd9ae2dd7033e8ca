import { type MuscleFatigue, repsUntil } from '../capacity/index.ts';
import type { ChainDraw } from './ChainDraw.ts';
import { type ChainWork, doWork } from './doWork.ts';
import type { StageRun } from './StageRun.ts';

/** Repetitions of one kind, and what ends them. */
export interface RepsOf {
  readonly threshold: number;
  readonly secondsPerRep: number;
  readonly costPerRep: number;
  readonly most?: number;
}

/** Whole repetitions; the attempt that fails is neither timed nor charged. */
export function runLifting(fatigue: MuscleFatigue, draw: ChainDraw, of: RepsOf): StageRun {
  const { threshold, secondsPerRep, costPerRep, most = Number.POSITIVE_INFINITY } = of;
  const reps = Math.min(most, repsUntil(1 - fatigue.fast - fatigue.slow, threshold, costPerRep));
  const count = Math.floor(reps + ROUNDING);
  const work: ChainWork = { kind: 'reps', reps: count, secondsPerRep, costPerRep };
  return {
    count,
    secondsUnderLoad: count * secondsPerRep,
    work: [work],
    fatigue: doWork(fatigue, work, draw.restPerSecond),
  };
}

/** Far above double rounding and far below a repetition: a count that is whole stays whole. */
const ROUNDING = 1e-9;
