import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { chainDose } from './chainDose.ts';
import { chainThresholds } from './chainThresholds.ts';
import { benchPress, chinUp, pulldown } from './exercises.testing.ts';
import { forecastChain } from './forecastChain.ts';
import type { Stage } from './Stage.ts';

const shape = fc.record({
  exercise: fc.constantFrom(chinUp, pulldown, benchPress),
  intensity: fc.double({ min: 0.4, max: 1, noNaN: true }),
  secondsPerRep: fc.double({ min: 2, max: 15, noNaN: true }),
  seed: fc.integer(),
});
const lift: Stage = { kind: 'lift' };
const lower: Stage = { kind: 'lower', secondsEach: 5, maxLowerings: 8 };
const runs = { numRuns: 40 };

it('the lines descend from lifting over holding to lowering', () => {
  const ratio = fc.double({ min: 1.001, max: 1.5, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 1, noNaN: true }), ratio, ratio, (intensity, a, b) => {
      const line = chainThresholds({ intensity, isometric: a, eccentric: a * b });
      expect(line.lift).toBeGreaterThan(line.hold);
      expect(line.hold).toBeGreaterThan(line.lower);
    }),
  );
});

it('a hold before lowering never gives more lowerings, and a longer one never more than a shorter', () => {
  fc.assert(
    fc.property(
      shape,
      fc.integer({ min: 3, max: 30 }),
      fc.integer({ min: 0, max: 30 }),
      (input, short, more) => {
        const count = (maxSeconds: number) => {
          const hold: readonly Stage[] = maxSeconds
            ? [{ kind: 'hold', at: 'middle', maxSeconds }]
            : [];
          return forecastChain({
            ...input,
            stages: [lift, ...hold, lower],
          });
        };
        const [none, brief, long] = [0, short, short + more].map(
          (seconds) => count(seconds).stages.at(-1)?.count,
        );
        for (const end of ['low', 'likely', 'high'] as const) {
          expect(brief?.[end]).toBeLessThanOrEqual(none?.[end] ?? 0);
          expect(long?.[end]).toBeLessThanOrEqual(brief?.[end] ?? 0);
        }
      },
    ),
    runs,
  );
});

it('a heavier load never gives more repetitions, in no part of the band', () => {
  fc.assert(
    fc.property(shape, fc.double({ min: 0, max: 0.3, noNaN: true }), (input, more) => {
      const light = forecastChain({ ...input, stages: [lift] }).stages[0]?.count;
      const heavier = {
        ...input,
        stages: [lift],
        intensity: Math.min(1.1, input.intensity + more),
      };
      const heavy = forecastChain(heavier).stages[0]?.count;
      for (const end of ['low', 'likely', 'high'] as const) {
        expect(heavy?.[end]).toBeLessThanOrEqual(light?.[end] ?? 0);
      }
    }),
    runs,
  );
});

it('every further stage costs more recovery', () => {
  const stages: readonly Stage[] = [
    lift,
    { kind: 'pause', seconds: 15 },
    { kind: 'lighter', loadShare: 0.8 },
    { kind: 'assisted', reps: 1 },
    { kind: 'part-range', maxReps: 5 },
    { kind: 'hold', at: 'middle', maxSeconds: 20 },
    lower,
  ];
  stages.forEach((_, index) => {
    expect(chainDose(stages.slice(0, index + 1)).hardSets).toBeGreaterThan(
      chainDose(stages.slice(0, index)).hardSets,
    );
  });
});
