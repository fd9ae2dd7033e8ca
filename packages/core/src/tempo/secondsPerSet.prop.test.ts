import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { secondsPerSet } from './secondsPerSet.ts';
import { secondsUnderLoad } from './secondsUnderLoad.ts';
import { starts, tempos } from './tempoArbitraries.testing.ts';

const reps = fc.integer({ min: 0, max: 999 });
const lastPauses = fc.constantFrom('counted', 'left-out');

describe('secondsPerSet', () => {
  it('rises with every repetition', () => {
    fc.assert(
      fc.property(tempos, reps, starts, lastPauses, (tempo, count, startsWith, lastPause) => {
        const timing = { startsWith, lastPause };
        expect(secondsPerSet(tempo, count + 1, timing)).toBeGreaterThan(
          secondsPerSet(tempo, count, timing),
        );
      }),
    );
  });

  it('is never less than the seconds under load, and never less counted than left out', () => {
    fc.assert(
      fc.property(tempos, reps, starts, (tempo, count, startsWith) => {
        const counted = { startsWith, lastPause: 'counted' } as const;
        const leftOut = { startsWith, lastPause: 'left-out' } as const;
        const whole = secondsPerSet(tempo, count, counted);
        expect(secondsPerSet(tempo, count, leftOut)).toBeLessThanOrEqual(whole);
        for (const pause of ['pause-after-lower', 'pause-after-lift'] as const) {
          const loaded = secondsUnderLoad(tempo, count, { ...counted, restingPauses: [pause] });
          expect(loaded).toBeLessThanOrEqual(whole);
        }
        expect(secondsUnderLoad(tempo, count, counted)).toBe(whole);
      }),
    );
  });
});
