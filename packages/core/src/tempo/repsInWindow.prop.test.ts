import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { repsInWindow } from './repsInWindow.ts';
import { secondsPerSet } from './secondsPerSet.ts';
import { starts, tempos } from './tempoArbitraries.testing.ts';

const windows = fc
  .tuple(fc.integer({ min: 0, max: 120 }), fc.integer({ min: 0, max: 120 }))
  .map(([one, other]) => ({ minSeconds: Math.min(one, other), maxSeconds: Math.max(one, other) }));
const lastPauses = fc.constantFrom('counted', 'left-out');

describe('repsInWindow', () => {
  it('agrees with trying every count', () => {
    fc.assert(
      fc.property(tempos, windows, starts, lastPauses, (tempo, window, startsWith, lastPause) => {
        const timing = { startsWith, lastPause };
        const counts = Array.from({ length: 700 }, (_, index) => index + 1);
        const fitting = counts.filter((reps) => {
          const seconds = secondsPerSet(tempo, reps, timing);
          return seconds >= window.minSeconds && seconds <= window.maxSeconds;
        });
        const found = repsInWindow(tempo, window, timing);
        if (found.kind === 'fits') {
          expect([found.fewest.reps, found.most.reps]).toEqual([fitting.at(0), fitting.at(-1)]);
        } else {
          expect(fitting).toEqual([]);
          expect(found.longer.reps).toBe(found.shorter.reps + 1);
          expect(found.longer.seconds).toBeGreaterThan(window.maxSeconds);
        }
      }),
      { numRuns: 300 },
    );
  });
});
