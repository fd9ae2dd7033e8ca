import {
  type FatigueRates,
  type MuscleFatigue,
  repCost,
  repsUntil,
  sustainedSeconds,
} from '../capacity/index.ts';
import type { ChainDraw } from './ChainDraw.ts';
import type { ChainForecastInput } from './ChainForecast.ts';
import { chainTimes } from './chainTimes.ts';
import { type ChainWork, doWork } from './doWork.ts';
import type { HoldStage, LowerStage, Stage } from './Stage.ts';

/** What one drawn lifter does in one stage. */
export interface StageRun {
  /** Whole repetitions or lowerings; seconds of a hold. */
  readonly count: number;
  readonly secondsUnderLoad: number;
  readonly work: readonly ChainWork[];
  readonly fatigue: MuscleFatigue;
}

type Setup = Pick<ChainForecastInput, 'exercise' | 'secondsPerRep'>;

/** A chain as one drawn lifter does it, stage by stage. */
export function runChain(
  stages: readonly Stage[],
  start: MuscleFatigue,
  draw: ChainDraw,
  setup: Setup,
): readonly StageRun[] {
  const runs: StageRun[] = [];
  let fatigue = start;
  let load = draw.intensity;
  stages.forEach((stage, index) => {
    if (stage.kind === 'lighter') load *= stage.loadShare;
    const run = runStage(stage, stages[index - 1], fatigue, { ...draw, intensity: load }, setup);
    runs.push(run);
    fatigue = run.fatigue;
  });
  return runs;
}

function runStage(
  stage: Stage,
  before: Stage | undefined,
  fatigue: MuscleFatigue,
  draw: ChainDraw,
  setup: Setup,
): StageRun {
  const { intensity: load, partRange } = draw;
  const { secondsPerRep } = setup;
  const costPerRep = repCost({ intensity: load, kappa: draw.kappa, alpha: draw.alpha });
  switch (stage.kind) {
    case 'lift':
      return repsToFailure(fatigue, draw, { threshold: load, secondsPerRep, costPerRep });
    case 'lighter':
    case 'pause': {
      const seconds = stage.kind === 'pause' ? stage.seconds : chainTimes.changeSeconds;
      const pause: ChainWork = { kind: 'rest', seconds };
      const rested = doWork(fatigue, pause, draw.restPerSecond);
      const run = repsToFailure(rested, draw, { threshold: load, secondsPerRep, costPerRep });
      return { ...run, work: [pause, ...run.work] };
    }
    case 'part-range':
      return repsToFailure(fatigue, draw, {
        threshold: load / partRange,
        secondsPerRep: secondsPerRep / 2,
        costPerRep: costPerRep / 2,
        most: stage.maxReps,
      });
    case 'assisted': {
      const work: ChainWork = { kind: 'reps', reps: stage.reps, secondsPerRep, costPerRep };
      return {
        count: stage.reps,
        secondsUnderLoad: stage.reps * secondsPerRep,
        work: [work],
        fatigue: doWork(fatigue, work, draw.restPerSecond),
      };
    }
    case 'hold':
      return hold(stage, fatigue, draw, setup);
    case 'lower':
      return lower(stage, before, fatigue, draw, setup);
  }
}

interface RepsOf {
  readonly threshold: number;
  readonly secondsPerRep: number;
  readonly costPerRep: number;
  readonly most?: number;
}

/** Whole repetitions; the attempt that fails is neither timed nor charged. */
function repsToFailure(fatigue: MuscleFatigue, draw: ChainDraw, of: RepsOf): StageRun {
  const { threshold, secondsPerRep, costPerRep, most = Number.POSITIVE_INFINITY } = of;
  const reps = Math.min(most, repsUntil(capacityOf(fatigue), threshold, costPerRep));
  const count = Math.floor(reps + ROUNDING);
  const work: ChainWork = { kind: 'reps', reps: count, secondsPerRep, costPerRep };
  return {
    count,
    secondsUnderLoad: count * secondsPerRep,
    work: [work],
    fatigue: doWork(fatigue, work, draw.restPerSecond),
  };
}

function hold(
  stage: HoldStage,
  fatigue: MuscleFatigue,
  draw: ChainDraw,
  { exercise }: Setup,
): StageRun {
  const { momentArm = 1 } = exercise.holds.find((position) => position.at === stage.at) ?? {};
  const targetLoad = (draw.intensity * momentArm) / draw.isometric;
  const seconds = Math.min(stage.maxSeconds, secondsLeft(fatigue, targetLoad, draw.rates));
  const work: ChainWork = { kind: 'sustain', targetLoad, seconds, rates: draw.rates };
  return {
    count: seconds,
    secondsUnderLoad: seconds,
    work: [work],
    fatigue: doWork(fatigue, work, draw.restPerSecond),
  };
}

function lower(
  stage: LowerStage,
  before: Stage | undefined,
  fatigue: MuscleFatigue,
  draw: ChainDraw,
  { exercise }: Setup,
): StageRun {
  const targetLoad = draw.intensity / draw.eccentric;
  const rates = draw.loweringRates;
  const reset: ChainWork = {
    kind: 'rest',
    seconds: chainTimes.resetSeconds[exercise.wayBack],
  };
  const work: ChainWork[] = [];
  let now = fatigue;
  let count = 0;
  let secondsUnderLoad = 0;
  const go = (piece: ChainWork) => {
    work.push(piece);
    now = doWork(now, piece, draw.restPerSecond);
  };
  const up = before?.kind === 'hold' && before.at !== 'stretched';
  if (!up && stage.maxLowerings > 1) go(reset);
  while (count < stage.maxLowerings) {
    const left = secondsLeft(now, targetLoad, rates);
    const seconds = Math.min(stage.secondsEach, left);
    if (seconds <= 0) break;
    go({ kind: 'sustain', targetLoad, seconds, rates });
    secondsUnderLoad += seconds;
    if (left < stage.secondsEach) break;
    count += 1;
    if (count < stage.maxLowerings) go(reset);
  }
  return { count, secondsUnderLoad, work, fatigue: now };
}

function secondsLeft(fatigue: MuscleFatigue, targetLoad: number, rates: FatigueRates): number {
  const fatigued = fatigue.fast + fatigue.slow;
  const left = sustainedSeconds({ targetLoad, fatigued, rates });
  return left.kind === 'fails' ? left.seconds : Number.POSITIVE_INFINITY;
}

function capacityOf({ fast, slow }: MuscleFatigue): number {
  return 1 - fast - slow;
}

/** Far above double rounding and far below a repetition: a count that is whole stays whole. */
const ROUNDING = 1e-9;
