import { type MuscleFatigue, repCost } from '../capacity/index.ts';
import type { ChainDraw } from './ChainDraw.ts';
import { chainTimes } from './chainTimes.ts';
import { type ChainWork, doWork } from './doWork.ts';
import { runHold, runLowering } from './runCarrying.ts';
import { runLifting } from './runLifting.ts';
import type { Stage } from './Stage.ts';
import type { ChainSetup, StageRun } from './StageRun.ts';

/** A chain as one drawn lifter does it, stage by stage. */
export function runChain(
  stages: readonly Stage[],
  start: MuscleFatigue,
  draw: ChainDraw,
  setup: ChainSetup,
): readonly StageRun[] {
  const runs: StageRun[] = [];
  let fatigue = start;
  let lifter = draw;
  stages.forEach((stage, index) => {
    if (stage.kind === 'lighter') {
      lifter = { ...lifter, intensity: lifter.intensity * stage.loadShare };
    }
    const run = runStage(stage, stages[index - 1], fatigue, lifter, setup);
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
  setup: ChainSetup,
): StageRun {
  const { intensity: load, partRange } = draw;
  const { secondsPerRep } = setup;
  const costPerRep = repCost({ intensity: load, kappa: draw.kappa, alpha: draw.alpha });
  switch (stage.kind) {
    case 'lift':
      return runLifting(fatigue, draw, { threshold: load, secondsPerRep, costPerRep });
    case 'lighter':
    case 'pause': {
      const seconds = stage.kind === 'pause' ? stage.seconds : chainTimes.changeSeconds;
      const pause: ChainWork = { kind: 'rest', seconds };
      const rested = doWork(fatigue, pause, draw.restPerSecond);
      const run = runLifting(rested, draw, { threshold: load, secondsPerRep, costPerRep });
      return { ...run, work: [pause, ...run.work] };
    }
    case 'part-range':
      return runLifting(fatigue, draw, {
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
      return runHold(stage, fatigue, draw, setup);
    case 'lower':
      return runLowering(stage, before, fatigue, draw, setup);
  }
}
