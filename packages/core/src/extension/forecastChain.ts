import { type Band, requireNumber } from '../basis/index.ts';
import { capacityRateSources, type MuscleFatigue } from '../capacity/index.ts';
import { tempoLaw } from '../strength/index.ts';
import type { ChainForecast, ChainForecastInput, StageForecast } from './ChainForecast.ts';
import { chainDose } from './chainDose.ts';
import { eccentricRatio, giessing, heldAndLowered, isometricRatio } from './chainSources.ts';
import { DRAW_DIMENSIONS, drawChain } from './drawChain.ts';
import { evenDraws } from './evenDraws.ts';
import { forcedRepHelp } from './forcedRepHelp.ts';
import { runChain } from './runChain.ts';
import type { Stage } from './Stage.ts';
import type { StageRun } from './StageRun.ts';

const fresh: MuscleFatigue = { fast: 0, slow: 0 };

/**
 * Repetitions, seconds and lowerings of a chain past lifting failure, as bands.
 *
 * 251 possible lifters are drawn evenly over the bands of what is uncertain (endurance, the load's
 * share of the one-rep max, pace, holding and lowering strength, fatigue and recovery rates); each
 * does the chain on the capacity state, and the bands are the 10th, 50th and 90th percentile.
 * Counts are whole. No study counts holds or lowerings after lifting failure; the notes say so.
 *
 * @returns one forecast a stage, in order; nothing possible shows as zeros and `chanceOfNone`.
 * @throws RangeError for intensity outside 0.2 to 1.1, seconds per rep outside 1 to 60, a seed
 *   that is not finite.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { forecastChain } from '@windlass/core/extension';
 * const found = findExercise('chin-up');
 * const forecast =
 *   found.kind === 'found' &&
 *   forecastChain({
 *     stages: [
 *       { kind: 'lift' },
 *       { kind: 'hold', at: 'contracted', maxSeconds: 30 },
 *       { kind: 'lower', secondsEach: 5, maxLowerings: 6 },
 *     ],
 *     exercise: found.exercise,
 *     intensity: 0.75,
 *     secondsPerRep: 9,
 *     seed: 1,
 *   });
 * forecast && forecast.stages[0]?.count?.level; // 0.8
 * forecast && forecast.stages[1]?.count; // null
 * ```
 */
export function forecastChain(input: ChainForecastInput): ChainForecast {
  requireNumber('forecastChain', 'intensity', input.intensity, 0.2, 1.1);
  requireNumber('forecastChain', 'secondsPerRep', input.secondsPerRep, 1, 60);
  requireNumber('forecastChain', 'seed', input.seed);
  const runs = evenDraws(DRAW_DIMENSIONS, input.seed).map((point) =>
    runChain(input.stages, input.fatigue ?? fresh, drawChain(input, point), input),
  );
  const stages = input.stages.map((stage, index) =>
    stageForecast(
      stage,
      runs.map((run) => run[index] as StageRun),
    ),
  );
  return {
    stages,
    secondsUnderLoad: bandOf(
      runs.map((run) => run.reduce((sum, stage) => sum + stage.secondsUnderLoad, 0)),
    ),
    dose: chainDose(input.stages),
    notes: notesOn(input),
    sources: [isometricRatio, eccentricRatio, heldAndLowered, giessing, ...capacityRateSources],
  };
}

function stageForecast(stage: Stage, runs: readonly StageRun[]): StageForecast {
  return {
    stage,
    count: stage.kind === 'hold' ? null : bandOf(runs.map((run) => run.count)),
    secondsUnderLoad: bandOf(runs.map((run) => run.secondsUnderLoad)),
    capacityLeft: bandOf(runs.map(({ fatigue }) => 1 - fatigue.fast - fatigue.slow)),
    chanceOfNone: runs.filter((run) => run.count === 0).length / runs.length,
    ...(stage.kind === 'assisted' && { help: forcedRepHelp.slice(0, stage.reps) }),
  };
}

/** The 10th, 50th and 90th percentile: a value that occurred, so counts stay whole. */
function bandOf(values: readonly number[]): Band {
  const sorted = new Float64Array(values).sort();
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] as number;
  return { low: at(0.1), likely: at(0.5), high: at(0.9), level: 0.8 };
}

function notesOn({ stages, intensity, secondsPerRep }: ChainForecastInput): readonly string[] {
  const notes: string[] = [];
  if (stages.some(({ kind }) => kind === 'hold' || kind === 'lower')) {
    notes.push(
      'No study counts holds or lowerings after lifting failure. These bands come from a model of fatigue and from how much stronger people hold and lower than lift.',
    );
  }
  if (stages.some(({ kind }) => kind === 'part-range')) {
    notes.push('How much stronger the long half of the range is was not measured after failure.');
  }
  if (intensity < 0.5) {
    notes.push('Below half of the one-rep max people differ far more than these bands show.');
  }
  if (secondsPerRep > tempoLaw.rangeSeconds[1]) {
    notes.push(
      'Repetitions slower than 10 seconds lie outside what was compared; fewer are likely.',
    );
  }
  return notes;
}
