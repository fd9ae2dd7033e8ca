import { type Coverage, intervalCoverage } from './intervalCoverage.ts';
import { type LogCoverage, logCoverage } from './logCoverage.ts';
import { type WindowHits, windowHits } from './windowHits.ts';

/** Seeds and sizes of the simulations: the same give the same figures. */
export const simulations = {
  coverage: { seed: 20_260_101, trials: 900 },
  windows: { seed: 31_415, trials: 400 },
  logs: { seed: 2_718, lifters: 100 },
} as const;

/** How the intervals and the recommended loads did over simulated lifters. */
export interface Calibration {
  readonly coverage: Coverage;
  readonly windows: readonly WindowHits[];
  readonly logs: readonly LogCoverage[];
}

/** The three simulations; they take about a minute. */
export function calibrate(): Calibration {
  const { coverage, windows, logs } = simulations;
  return {
    coverage: intervalCoverage(coverage.seed, coverage.trials),
    windows: windowHits(windows.seed, windows.trials),
    logs: logCoverage(logs.seed, logs.lifters),
  };
}
