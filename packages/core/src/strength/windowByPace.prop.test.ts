import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import { enduranceCurves } from './enduranceCurves.ts';
import { priorFor } from './priorFor.ts';
import { strengthFrom } from './strengthFrom.ts';
import { windowByPace } from './windowByPace.ts';

const paces = [2, 3, 4, 6, 8];
const choices = Array.from({ length: 20 }, (_, index) => ({ load: kg(20 + 3 * index) }));

describe('windowByPace', () => {
  for (const [name, curve] of Object.entries(enduranceCurves)) {
    it(`never asks more, never gives more, and lasts no less as ${name} repetitions slow`, () => {
      const posterior = strengthFrom({
        sets: [{ load: kg(50), reps: 9, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
        prior: priorFor(curve),
        today: 0,
        cells: { columns: 48, rows: 16 },
      });
      if (posterior.kind !== 'posterior') throw new Error(posterior.kind);
      const keep = { load: kg(45) };
      const answers = windowByPace(
        { posterior, choices, window: { minReps: 6, maxReps: 9 } },
        keep,
        paces,
      );
      const loads = answers.map(({ answer }) =>
        answer.kind === 'found' ? toKg(answer.best.choice.load) : Number.NaN,
      );
      expect(loads).toEqual([...loads].sort((a, b) => b - a));
      const reps = answers.map(({ kept }) => kept.reps.likely);
      expect(reps).toEqual([...reps].sort((a, b) => b - a));
      const seconds = answers.map(({ kept }) => kept.setSeconds?.likely ?? 0);
      // counts are whole: a set may seem shorter by the part of a repetition that is cut off
      seconds.slice(1).forEach((one, index) => {
        expect(one).toBeGreaterThanOrEqual((seconds[index] ?? 0) - (paces[index + 1] ?? 0));
      });
    });
  }
});
