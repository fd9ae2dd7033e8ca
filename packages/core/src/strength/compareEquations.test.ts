import { describe, expect, it } from 'vitest';
import { kg, type Load } from '../load/index.ts';
import { compareEquations } from './compareEquations.ts';

function several(loadKg: number, reps: number, lift?: Parameters<typeof compareEquations>[2]) {
  const answer = compareEquations(kg(loadKg), reps, lift);
  if (answer.kind !== 'several') throw new Error('a single');
  return answer;
}

describe('compareEquations', () => {
  it('takes a single as it is: Epley would make 103.33 kg of 100', () => {
    expect(compareEquations(kg(100), 1)).toEqual({ kind: 'single', oneRepMaxKg: 100 });
  });

  it('gives each answer, with whether the equation was made for such a set', () => {
    const { answers, inside, warnings } = several(100, 5);
    const epley = answers.find(({ equation }) => equation.id === 'epley');
    expect(epley?.oneRepMaxKg).toBeCloseTo(116.65, 10); // 100 * (1 + 0.0333 * 5)
    expect(epley?.place).toBe('inside');
    expect(answers.find(({ equation }) => equation.id === 'braith-trained')?.place).toBe(
      'other-lift',
    );
    expect(inside?.lowestKg).toBeCloseTo(100 / 0.925_75, 1); // Kemmler, 92.575 % at 5
    expect(inside?.highestKg).toBeCloseTo(100 / 0.840_26, 1); // Mayhew, 84.026 % at 5
    expect(inside?.share).toBeCloseTo(92.575 / 84.026 - 1, 4);
    expect(inside?.equations).toBe(11);
    expect(warnings).toEqual([]);
  });

  it('spreads over every equation for any lift, or over none where none holds', () => {
    // 60 repetitions: Mayhew gives 53.7 % and holds from 55 %, Kemmler ends at 20
    const { inside, all, answers } = several(40, 60);
    expect(inside).toBeUndefined();
    const general = answers.flatMap(({ equation, oneRepMaxKg }) =>
      equation.lift === undefined && oneRepMaxKg !== undefined ? [oneRepMaxKg] : [],
    );
    expect(all.equations).toBe(general.length);
    expect(all.lowestKg).toBeCloseTo(40 * 60 ** 0.1, 9); // Lombardi
    expect(all.highestKg).toBeCloseTo(40 * 2.998, 9); // Epley, 1 + 0.0333 * 60
  });

  it('takes loads above 0 and 1 to 100 repetitions', () => {
    for (const reps of [1, 100]) expect(() => compareEquations(1 as Load, reps)).not.toThrow();
    for (const [load, reps, name] of [
      [kg(0), 5, 'load'],
      [kg(50), 0, 'reps'],
      [kg(50), 101, 'reps'],
    ] as const) {
      expect(() => compareEquations(load, reps)).toThrow(`compareEquations: ${name} must be`);
    }
  });

  it('parts by less than 9 points of the one-rep max at 3 to 5 and by 27 at 20 repetitions', () => {
    const points = (reps: number) => {
      const { all } = several(100, reps);
      return 100 * (100 / all.lowestKg - 100 / all.highestKg);
    };
    for (const reps of [3, 4, 5]) expect(points(reps)).toBeLessThan(9);
    // Lombardi 74.113, Brzycki 47.180
    expect(points(20)).toBeCloseTo(26.933, 2);
  });

  it('warns above ten repetitions, where next to none was made for it', () => {
    const { warnings, inside } = several(40, 20);
    expect(warnings).toEqual(['above-10-reps']);
    expect(inside?.equations).toBe(2); // Kemmler to 20 repetitions, Mayhew to 55 %
    expect(several(40, 10).warnings).toEqual([]);
  });

  it('gives no answer where an equation breaks down', () => {
    const broken = several(40, 40)
      .answers.filter(({ place }) => place === 'breaks-down')
      .map(({ equation }) => equation.id);
    // past 36.97 and 37.92 repetitions two go below 0; the cubic falls below the load itself
    expect(broken).toEqual(expect.arrayContaining(['brzycki', 'lander', 'kemmler']));
    // 1 - 0.02 * 50 is 0
    const adams = several(40, 50).answers.find(({ equation }) => equation.id === 'adams');
    expect(adams).toMatchObject({ place: 'breaks-down', oneRepMaxKg: undefined });
  });

  it('adds the equations of the lift that is named', () => {
    const place = (id: string, reps: number) =>
      several(100, reps, 'bench-press').answers.find(({ equation }) => equation.id === id)?.place;
    expect(place('reynolds-chest-5rm', 5)).toBe('inside');
    expect(place('reynolds-chest-5rm', 6)).toBe('outside-its-range');
    expect(place('reynolds-leg-5rm', 5)).toBe('other-lift');
    // those for any lift stay
    expect(place('epley', 5)).toBe('inside');
  });

  it('answers belt chin-ups on the whole load that moves', () => {
    // 80 kg body and 10 kg belt, 8 repetitions: 90 kg, not 10
    const { inside } = several(90, 8);
    expect(inside?.lowestKg).toBeGreaterThan(100);
    expect(inside?.highestKg).toBeLessThan(116);
  });
});
