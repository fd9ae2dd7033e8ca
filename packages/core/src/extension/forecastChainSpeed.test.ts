import { expect, it } from 'vitest';
import { chinUp } from './exercises.testing.ts';
import { forecastChain } from './forecastChain.ts';
import type { Stage } from './Stage.ts';

const stages: readonly Stage[] = [
  { kind: 'lift' },
  { kind: 'hold', at: 'contracted', maxSeconds: 60 },
  { kind: 'lower', secondsEach: 5, maxLowerings: 8 },
];

it('forecasts a chain in less than 2 ms', () => {
  const round = () => {
    const begun = performance.now();
    for (let run = 0; run < 10; run += 1) {
      forecastChain({ stages, exercise: chinUp, intensity: 0.75, secondsPerRep: 9, seed: 7 });
    }
    return (performance.now() - begun) / 10;
  };
  // the fastest round: a busy machine only adds
  const each = Math.min(...Array.from({ length: 20 }, round));
  console.log(`chain forecast with bands: ${each.toFixed(2)} ms`);
  expect(each).toBeLessThan(2);
});
