import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toKg } from '../load/index.ts';
import { barWith, sessionOn } from './gym.testing.ts';
import { nextLoad } from './nextLoad.ts';

const bar = barWith(20, 10, 5, 2.5, 1.25);
const reps = fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 4 });
const history = fc
  .array(fc.record({ kilos: fc.integer({ min: 12, max: 56 }), reps }), {
    minLength: 1,
    maxLength: 6,
  })
  .map((list) =>
    list.map((entry, i) =>
      sessionOn(
        `2026-03-${String(2 * i + 1).padStart(2, '0')}`,
        { value: 2.5 * entry.kilos, unit: 'kg' },
        entry.reps,
      ),
    ),
  );

describe('nextLoad', () => {
  it('never steps up by more than a tenth, and only after the top of the window', () => {
    fc.assert(
      fc.property(history, fc.integer({ min: 1, max: 10 }), (sessions, minReps) => {
        const window = { minReps, maxReps: minReps + 3 };
        const advice = nextLoad({ ...bar, sessions, window, on: '2026-03-14' });
        const last = sessions.at(-1)?.sets[0].load ?? 0;
        if (!('load' in advice)) throw new Error(advice.kind);
        expect(advice.load.load).toBeLessThanOrEqual(1.1 * last + 1);
        if (advice.load.load > last) {
          const fewest = Math.min(...(sessions.at(-1)?.sets ?? []).map((set) => set.reps));
          expect(fewest).toBeGreaterThanOrEqual(window.maxReps);
        }
        expect(advice.aim).toBeGreaterThanOrEqual(window.minReps);
      }),
    );
  });

  it('gives a load that the gym has', () => {
    fc.assert(
      fc.property(history, (sessions) => {
        const advice = nextLoad({
          ...bar,
          sessions,
          window: { minReps: 5, maxReps: 8 },
          on: '2026-03-14',
        });
        if (!('load' in advice)) throw new Error(advice.kind);
        expect((toKg(advice.load.load) - 20) % 2.5).toBe(0);
      }),
    );
  });
});
