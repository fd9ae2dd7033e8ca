import { describe, expect, it } from 'vitest';
import { kg } from '../../packages/core/src/load/index.ts';
import {
  generalCurve,
  loadForWindow,
  oneRepMaxKg,
  type PerformedSet,
  priorFor,
  type SetEnd,
  strengthFrom,
} from '../../packages/core/src/strength/index.ts';

const set = (load: number, reps: number, day = 0, end: SetEnd = { kind: 'failure' }) =>
  ({ load: kg(load), reps, end, day, secondsPerRep: 3 }) satisfies PerformedSet;

const { secondsPerRep: _, ...singleAtUnknownPace } = set(100, 1);

const histories: Readonly<Record<string, readonly PerformedSet[]>> = {
  'one set of eight': [set(40, 8)],
  'a single at an unknown pace': [singleAtUnknownPace],
  'a set of forty': [set(20, 40)],
  'a floor': [set(60, 8, 0, { kind: 'more', atLeast: 2 })],
  'a ceiling': [set(100, 0)],
  'a stop with three left': [set(60, 8, 0, { kind: 'reserve', repsLeft: 3 })],
  'sets that contradict each other': [set(100, 5), set(60, 5)],
  'two loads, one old': [set(100, 5), set(80, 12, 40)],
  'six sessions': [0, 3, 6, 10, 13, 17].map((day) =>
    set(80 + (day % 2) * 10, 11 - (day % 2) * 4, day),
  ),
};

const windows = [
  { minReps: 5, maxReps: 7 },
  { minReps: 12, maxReps: 15 },
];

/** Ten times as many cells both ways as the usual 96 by 32. */
const fine = { columns: 960, rows: 320 };

describe('the usual grid against one ten times finer', () => {
  for (const [name, sets] of Object.entries(histories)) {
    it(`has the same interval within 0.5 % and window chances within half a point: ${name}`, () => {
      const today = Math.max(...sets.map(({ day }) => day)) + 2;
      const [usual, finer] = [undefined, fine].map((cells) => {
        const prior = priorFor(generalCurve);
        const belief = strengthFrom({ sets, prior, today, ...(cells ? { cells } : {}) });
        if (belief.kind !== 'posterior') throw new Error(belief.kind);
        const likely = oneRepMaxKg(belief).likely;
        const choices = [0.6, 0.75, 0.85, 0.95].map((share) => ({
          load: kg(Math.round(likely * share)),
        }));
        return { belief, choices };
      });
      if (usual === undefined || finer === undefined) throw new Error('no belief');
      for (const when of ['usual', 'today'] as const) {
        const a = oneRepMaxKg(usual.belief, 0.8, when);
        const b = oneRepMaxKg(finer.belief, 0.8, when);
        for (const end of ['low', 'likely', 'high'] as const) {
          expect(Math.abs(a[end] / b[end] - 1)).toBeLessThan(0.005);
        }
      }
      for (const window of windows) {
        const [coarse, exact] = [usual, finer].map(({ belief }) =>
          loadForWindow({ posterior: belief, choices: usual.choices, window, secondsPerRep: 3 }),
        );
        if (!(coarse && exact && 'all' in coarse && 'all' in exact)) throw new Error('no loads');
        coarse.all.forEach((one, index) => {
          expect(Math.abs(one.inside - (exact.all[index]?.inside ?? 1))).toBeLessThan(0.005);
          expect(Math.abs(one.before - (exact.all[index]?.before ?? 1))).toBeLessThan(0.005);
        });
      }
    }, 60_000);
  }
});
