import { findExercise } from '../../../packages/core/src/anatomy/index.ts';
import { addFatigue, type MuscleFatigue } from '../../../packages/core/src/capacity/index.ts';
import { integrateCarrying } from '../../../packages/core/src/capacity/oracle/integrateCarrying.ts';
import { DRAW_DIMENSIONS, drawChain } from '../../../packages/core/src/extension/drawChain.ts';
import { evenDraws } from '../../../packages/core/src/extension/evenDraws.ts';
import {
  type ChainForecastInput,
  forecastChain,
} from '../../../packages/core/src/extension/index.ts';
import { runChain } from '../../../packages/core/src/extension/runChain.ts';
import type { Bench } from '../Benchmark.ts';
import { fastest, fastestOf, times, written } from '../timing.ts';

const found = findExercise('chin-up');
if (found.kind !== 'found') throw new Error('no chin-up');

const fresh: MuscleFatigue = { fast: 0, slow: 0 };

const input: ChainForecastInput = {
  stages: [
    { kind: 'lift' },
    { kind: 'hold', at: 'contracted', maxSeconds: 60 },
    { kind: 'lower', secondsEach: 5, maxLowerings: 6 },
  ],
  exercise: found.exercise,
  intensity: 0.75,
  secondsPerRep: 6,
  seed: 1,
};

/**
 * The forecast of a chain beside an adaptive integration of the full fatigue equations for the same
 * 251 drawn lifters: what each held and lowered is integrated from the state that the chain is in.
 */
export const chains: Bench = {
  id: 'chains',
  title: 'Forecast of lift, hold and lowerings for 251 drawn lifters',
  run: async () => {
    const lifters = evenDraws(DRAW_DIMENSIONS, input.seed).map((point) => drawChain(input, point));
    const runs = lifters.map((draw) => runChain(input.stages, fresh, draw, input));
    let furthest = 0;
    const integrate = () => {
      for (const [index, run] of runs.entries()) {
        const rest = lifters[index]?.restPerSecond ?? 0;
        let fatigue: MuscleFatigue = fresh;
        for (const work of run.flatMap((stage) => stage.work)) {
          if (work.kind === 'reps') fatigue = addFatigue(fatigue, work.reps * work.costPerRep);
          if (work.kind === 'rest') {
            fatigue = { ...fatigue, fast: fatigue.fast * Math.exp(-rest * work.seconds) };
          }
          if (work.kind !== 'sustain' || work.seconds <= 0) continue;
          const tired = fatigue.fast + fatigue.slow;
          const { seconds, end } = integrateCarrying({
            load: work.targetLoad,
            fatigue: work.rates.fatiguePerSecond,
            recovery: work.rates.recoveryPerSecond,
            start: [work.targetLoad, Math.max(0, 1 - work.targetLoad - tired), tired],
            mostSeconds: work.seconds,
          });
          furthest = Math.max(furthest, (work.seconds - seconds) / Math.max(work.seconds, 5));
          fatigue = addFatigue(fatigue, end[2] - tired);
        }
      }
    };
    integrate();
    if (furthest > 0.05) throw new Error(`the integration ends ${furthest} earlier`);
    const integrated = fastestOf(9, integrate);
    const ours = fastest(() => {
      for (const draw of lifters) runChain(input.stages, fresh, draw, input);
    });
    const whole = fastest(() => forecastChain(input));
    return {
      lines: [
        `the chains of 251 lifters: ${written(ours)} in closed form, ${written(integrated)} by integration: ${times(integrated / ours)} as fast`,
        `the whole forecast, with drawing the lifters and its bands: ${written(whole)}, ${times(integrated / whole)} as fast as the integration alone`,
        `a carried load ends at most ${(100 * furthest).toFixed(1)} % earlier by the integration`,
      ],
      ratios: [
        { id: 'chains/lifters', value: integrated / ours, atLeast: 100 },
        { id: 'chains/whole-forecast', value: integrated / whole },
      ],
    };
  },
};
