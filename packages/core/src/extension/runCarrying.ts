import { type FatigueRates, type MuscleFatigue, sustainedSeconds } from '../capacity/index.ts';
import type { ChainDraw } from './ChainDraw.ts';
import { chainTimes } from './chainTimes.ts';
import { type ChainWork, doWork } from './doWork.ts';
import type { HoldStage, LowerStage, Stage } from './Stage.ts';
import type { ChainSetup, StageRun } from './StageRun.ts';

/** The load held until it slips or the time is up. */
export function runHold(
  stage: HoldStage,
  fatigue: MuscleFatigue,
  draw: ChainDraw,
  { exercise }: ChainSetup,
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

/** Lowerings until one cannot be kept to time, or the count is reached. */
export function runLowering(
  stage: LowerStage,
  before: Stage | undefined,
  fatigue: MuscleFatigue,
  draw: ChainDraw,
  { exercise }: ChainSetup,
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
