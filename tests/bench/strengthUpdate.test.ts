import { describe, expect, it } from 'vitest';
import { kg } from '../../packages/core/src/load/index.ts';
import {
  generalCurve,
  loadForWindow,
  type PerformedSet,
  priorFor,
  strengthAfter,
  strengthFrom,
} from '../../packages/core/src/strength/index.ts';

const set = (load: number, reps: number, day: number) =>
  ({
    load: kg(load),
    reps,
    end: { kind: 'failure' },
    day,
    secondsPerRep: 3,
  }) satisfies PerformedSet;

const history = Array.from({ length: 20 }, (_, index) =>
  set(80 + 5 * (index % 3), 11 - 3 * (index % 3), 3 * index),
);

/** Milliseconds a call: the fastest of five medians over 20 calls, so that a busy machine counts less. */
function milliseconds(call: () => unknown): number {
  const medians = Array.from({ length: 5 }, () => {
    const times = Array.from({ length: 20 }, () => {
      const start = performance.now();
      call();
      return performance.now() - start;
    });
    return times.sort((a, b) => a - b)[10] ?? Number.POSITIVE_INFINITY;
  });
  return Math.min(...medians);
}

describe('how long the strength posterior takes', () => {
  const prior = priorFor(generalCurve);
  const belief = strengthFrom({ sets: history, prior, today: 57 });

  it('learns a new set in less than 5 ms', () => {
    if (belief.kind !== 'posterior') throw new Error(belief.kind);
    const update = milliseconds(() => strengthAfter(belief, { sets: [set(85, 9, 60)], today: 60 }));
    const first = milliseconds(() => strengthFrom({ sets: [set(40, 8, 0)], prior, today: 0 }));
    console.log(`a new set: ${update.toFixed(2)} ms; the first set: ${first.toFixed(2)} ms`);
    expect(update).toBeLessThan(5);
    expect(first).toBeLessThan(5);
  }, 60_000);

  it('answers a rep window over 60 loads in less than 50 ms', () => {
    if (belief.kind !== 'posterior') throw new Error(belief.kind);
    const choices = Array.from({ length: 60 }, (_, index) => ({ load: kg(20 + 2.5 * index) }));
    const window = { minReps: 8, maxReps: 11 };
    const answer = milliseconds(() =>
      loadForWindow({ posterior: belief, choices, window, secondsPerRep: 4 }),
    );
    console.log(`a rep window over 60 loads: ${answer.toFixed(2)} ms`);
    // a change of an input shows at once: half of the 100 ms that are felt as at once
    expect(answer).toBeLessThan(50);
  }, 60_000);
});
