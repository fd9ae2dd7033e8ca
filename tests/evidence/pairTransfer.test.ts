import { describe, expect, it } from 'vitest';
import { findExercise } from '../../packages/core/src/anatomy/index.ts';
import { repCost, repsUntil, restCapacity } from '../../packages/core/src/capacity/index.ts';
import { kg } from '../../packages/core/src/load/index.ts';
import { pairRules, planPair } from '../../packages/core/src/pairing/index.ts';
import {
  enduranceCurves,
  type RepCurve,
  shareForReps,
} from '../../packages/core/src/strength/index.ts';
import { readReference } from './readReference.ts';

const SECONDS_PER_REP = 3;
const TEN = 10;
const { likely } = pairRules.transfer;

function exercise(id: string) {
  const found = findExercise(id);
  if (found.kind !== 'found') throw new Error(id);
  return found.exercise;
}

const pairs = [
  ['leg-extension', 'leg-press'],
  ['leg-extension', 'barbell-back-squat'],
  ['machine-fly', 'barbell-bench-press'],
  ['straight-arm-cable-pulldown', 'cable-pulldown'],
] as const;

/** An isolation set of ten to failure, then the compound lift with what it usually does ten times. */
function pairOf(first: string, second: string, transitionSeconds: number) {
  const isolation = { ...exercise(first), span: 'isolation' as const };
  const pair = planPair({
    target: Object.keys(isolation.direct) as (keyof typeof isolation.direct)[],
    isolation: { exercise: isolation, reps: TEN, repsLeft: 0, secondsPerRep: SECONDS_PER_REP },
    compound: {
      exercise: { ...exercise(second), span: 'compound' },
      usual: { load: kg(100), reps: TEN },
      secondsPerRep: SECONDS_PER_REP,
    },
    transitionSeconds,
  });
  if (pair.kind !== 'allowed') throw new Error(pair.refusals[0]?.why);
  // What it takes if all of it shows.
  return { ...pair, drop: (pair.capacity.without - pair.capacity.with) / likely };
}

/** What a set of ten of a lift to failure takes from the lift itself, some time later. */
function ownDrop(id: string, seconds: number): number {
  const curve = enduranceCurves[exercise(id).endurance];
  const intensity = shareForReps(TEN, curve);
  const taken = 1 - intensity + repCost({ intensity, ...curve });
  const { all } = restCapacity({ all: { fast: 0.8 * taken, slow: 0.2 * taken } }, seconds);
  return (all?.fast ?? 0) + (all?.slow ?? 0);
}

function repsLeft(drop: number, intensity: number, curve: RepCurve): number {
  return repsUntil(1 - drop, intensity, repCost({ intensity, ...curve }));
}

describe('what an isolation set costs the compound lift after it', () => {
  it.each(pairs)(
    '%s then %s: likely less than a set of the compound lift itself',
    (first, second) => {
      for (const seconds of [10, 60, 120]) {
        expect(likely * pairOf(first, second, seconds).drop).toBeLessThan(ownDrop(second, seconds));
      }
    },
  );

  it('is likely less, after the rest between exercises, than a whole session costs a squat', () => {
    const [fresh, tired] = readReference('spreuwenberg-2006-order').rows.map((row) =>
      Number(row[2]),
    );
    // 8.0 repetitions at 85 % of the one-rep max give the endurance of those squatters.
    const intensity = 0.85;
    const { alpha } = enduranceCurves.squat;
    const kappa = (((fresh ?? 0) - 1) * intensity ** alpha) / (1 - intensity);
    const reps = (transfer: number, seconds: number) =>
      repsLeft(transfer * pairOf('leg-extension', 'barbell-back-squat', seconds).drop, intensity, {
        kappa,
        alpha,
      });
    for (const seconds of [120, 180]) {
      expect(reps(likely, seconds)).toBeGreaterThan(tired ?? 0);
      expect(reps(likely, seconds)).toBeLessThan(fresh ?? 0);
    }
    // At 1 one set of leg extensions would cost as much as that whole session.
    expect(reps(1, 120)).toBeLessThanOrEqual((tired ?? 0) + 0.05);
  });

  it('is likely no more load than repeating the compound lift after a short rest', () => {
    // 10 to 15 % per set held ten repetitions; the rest was short, taken as a minute.
    const rows = readReference('load-drop-to-hold-reps').rows;
    const most = Math.max(...rows.map((row) => Number(/\d+$/.exec(String(row[3]))?.[0])));
    expect(most).toBe(15);
    for (const [first, second] of pairs) {
      const { loadShare } = pairOf(first, second, 60);
      expect(100 * (1 - loadShare.likely)).toBeLessThan(most);
    }
  });

  it('is likely fewer repetitions lost than between two sets of one lift with two minutes of rest', () => {
    // Motriz 2013 at 70 %: 28 to 35 % fewer in the second set, with the same muscles in both.
    const row = readReference('multiset-decline').rows.find(
      ([study]) => study === 'Motriz 2013 (17 men)',
    );
    const least = Number(/-(\d+) to/.exec(String(row?.[4]))?.[1]);
    expect(least).toBe(28);
    for (const [first, second] of pairs) {
      const curve = enduranceCurves[exercise(second).endurance];
      const intensity = 0.7;
      const lost = repsLeft(likely * pairOf(first, second, 120).drop, intensity, curve);
      expect(100 * (1 - lost / repsLeft(0, intensity, curve))).toBeLessThan(least);
    }
  });

  it('is equal in both orders, as the totals of both lifts were', () => {
    const row = readReference('pre-exhaustion-findings').rows.find(([study]) =>
      String(study).startsWith('Gentil'),
    );
    expect(row?.[2]).toContain('total reps and total work over both lifts not different');
    const press = enduranceCurves.press;
    const fly = enduranceCurves[exercise('machine-fly').endurance];
    const afterFly = pairOf('machine-fly', 'barbell-bench-press', 20).drop;
    const afterPress = pairOf('barbell-bench-press', 'machine-fly', 20).drop;
    const presses = repsLeft(likely * afterFly, shareForReps(TEN, press), press);
    const flies = repsLeft(likely * afterPress, shareForReps(TEN, fly), fly);
    // Thirteen men, whose repetitions repeat to about one: less than one apart is no difference.
    expect(Math.abs(presses - flies)).toBeLessThan(1);
  });

  it('has the recalled count of a pair inside its band, which is not counted as evidence', () => {
    const reference = readReference('augustsson-2003-reps');
    expect(reference.provenance).toBe('recalled');
    const [without, after] = reference.rows.map((row) => Number(row[1]));
    const { repsAtUsualLoad } = pairOf('leg-extension', 'leg-press', 10);
    const recalled = Math.floor((TEN * (after ?? 0)) / (without ?? 1));
    expect(repsAtUsualLoad.likely).toBeLessThan(recalled);
    expect(repsAtUsualLoad.high).toBeGreaterThanOrEqual(recalled);
  });
});
