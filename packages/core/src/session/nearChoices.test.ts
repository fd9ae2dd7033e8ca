import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import {
  generalCurve,
  loadForWindow,
  priorFor,
  type StrengthPosterior,
  strengthFrom,
  type WindowQuestion,
} from '../strength/index.ts';
import { nearChoices } from './nearChoices.ts';

type Choice = { readonly load: ReturnType<typeof kg> };

/** From sets of so many kilograms and repetitions, to failure or with some more left. */
function believe(...sets: readonly (readonly [number, number, number?])[]): StrengthPosterior {
  const belief = strengthFrom({
    sets: sets.map(([kilograms, reps, atLeast]) => ({
      load: kg(kilograms),
      reps,
      end: atLeast === undefined ? { kind: 'failure' } : { kind: 'more', atLeast },
      day: 0,
    })),
    prior: priorFor(generalCurve),
    today: 3,
  });
  if (belief.kind !== 'posterior') throw new Error('nothing known');
  return belief;
}

const known = believe([50, 10]);
const range = (from: number, to: number, step = 0.5): readonly Choice[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, at) => ({
    load: kg(from + at * step),
  }));
const ask = (
  minReps: number,
  maxReps: number,
  choices: readonly Choice[],
  posterior = known,
): WindowQuestion<Choice> => ({
  posterior,
  choices,
  window: { minReps, maxReps },
  secondsPerRep: 4,
});
const kilograms = (choices: readonly Choice[]) => choices.map(({ load }) => toKg(load));

describe('nearChoices', () => {
  it.each([
    ['a wide window', ask(8, 11, range(20, 90))],
    ['a careful load far below the best', ask(10, 10, range(20, 90))],
    ['a careful load above the best', ask(1, 3, range(40, 100))],
    ['many repetitions', ask(20, 30, range(5, 75))],
    ['everything too heavy', ask(60, 70, range(40, 80))],
    ['the best load at the light end', ask(8, 11, range(50.5, 90))],
    ['the best load at the heavy end', ask(8, 11, range(20, 47.5))],
    ['many loads and a little', ask(8, 11, [...range(20, 52), { load: kg(52.1) }])],
  ])('finds what is found among all, with fewer loads: %s', (_, question) => {
    const all = loadForWindow(question);
    const near = nearChoices(question);
    const found = loadForWindow({ ...question, choices: near });
    const { all: _all, ...answer } = all as Exclude<typeof all, { kind: 'no-loads' }>;
    expect(found).toMatchObject(answer);
    expect(near.length).toBeLessThan(question.choices.length / 2);
    expect(near).toEqual(question.choices.filter((choice) => near.includes(choice)));
    if (all.kind !== 'found') return;
    // chances that differ by less than a hundredth are equal to a lifter, so those stay to choose from
    for (const { choice, inside } of all.all) {
      if (!near.includes(choice)) expect(inside).toBeLessThan(all.best.inside - 0.01);
    }
  });

  it('finds the two loads beside a gap', () => {
    // at least two repetitions more than eight: nobody knows how strong, so much is within reach
    const unsure = believe([40, 8, 2]);
    const question = ask(10, 10, [...range(35, 76), ...range(84, 104)], unsure);
    const found = loadForWindow({ ...question, choices: nearChoices(question) });
    if (found.kind !== 'none-near') throw new Error(found.kind);
    expect(found.reason).toBe('gap');
    expect([found.lighter, found.heavier].map((one) => one && toKg(one.choice.load))).toEqual([
      76, 84,
    ]);
  });

  it.each([
    // single repetitions with 28 and 31 kg, and more than sixteen with 95 kg
    [
      'the heaviest load',
      believe([28, 1], [31, 2], [95, 16, 1]),
      1,
      2,
      range(15, 143.75, 1.25),
      0.908,
    ],
    ['the heaviest load again', believe([80, 3, 2], [30, 14]), 6, 9, range(35, 98, 0.75), 1],
    ['what the last load says', believe([62, 16, 1], [49, 12]), 8, 10, range(12, 97), 1],
    [
      'the likely load far from the best, beside a gap',
      believe([66, 10, 3], [49, 10]),
      13,
      18,
      [...range(30, 73, 1), ...range(89, 118, 1)],
      1,
    ],
    [
      'a careful load far from the best',
      believe([47, 9, 3], [61, 14]),
      25,
      26,
      range(15, 57, 1),
      1,
    ],
  ])(
    'finds the same for beliefs that contradict themselves: %s',
    (_, belief, from, to, all, capacity) => {
      const question = { ...ask(from, to, all, belief), capacity };
      const found = loadForWindow({ ...question, choices: nearChoices(question) });
      const { all: _all, ...answer } = loadForWindow(question) as Exclude<
        typeof found,
        { kind: 'no-loads' }
      >;
      expect(found).toMatchObject(answer);
    },
  );

  it('takes all of 24 loads within reach, and fewer of 25', () => {
    // for ten repetitions with 50 kg, everything from 30 to 78 kg is near 8 to 11
    const few = range(30, 76, 2);
    expect(few).toHaveLength(24);
    expect(nearChoices(ask(8, 11, few))).toEqual(few);
    expect(nearChoices(ask(8, 11, range(30, 78, 2))).length).toBeLessThan(25);
  });

  it('leaves out what is far lighter and far heavier, but for two loads on either side', () => {
    // 1.5 times eleven repetitions are 16.5 of them, and eight by 1.5 are 5.3
    const near = kilograms(
      nearChoices(
        ask(
          8,
          11,
          [...range(1, 9, 1), 50, 200, 210, 220, 230, 240].map((one) =>
            typeof one === 'number' ? { load: kg(one) } : one,
          ),
        ),
      ),
    );
    expect(near).toEqual([8, 9, 50, 200, 210]);
  });

  it('takes the two heaviest where all are far too light, and no load of nothing', () => {
    expect(kilograms(nearChoices(ask(8, 11, range(0, 8, 1))))).toEqual([7, 8]);
    expect(kilograms(nearChoices(ask(8, 11, [{ load: kg(0) }, { load: kg(50) }])))).toEqual([50]);
    expect(nearChoices(ask(8, 11, [{ load: kg(0) }]))).toEqual([]);
    expect(nearChoices(ask(8, 11, []))).toEqual([]);
  });
});
