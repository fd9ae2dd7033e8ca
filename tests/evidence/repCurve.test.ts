import { describe, expect, it } from 'vitest';
import {
  enduranceCurves,
  generalCurve,
  repsAtShare,
  shareForReps,
} from '../../packages/core/src/strength/index.ts';
import { fitKappa, logError } from './fitKappa.ts';
import { readReference } from './readReference.ts';
import { repGroups } from './repCounts.ts';
import { repCurveChecks } from './repCurveChecks.ts';

const groups = repGroups();
const several = groups.filter(({ counts }) => counts.length > 1);

/** Root mean square log error over the counts that pass, each group with its own kappa. */
function errorOf(alpha: number, passes: (share: number) => boolean, from = several): number {
  const squares = from.flatMap(({ counts }) => {
    const kappa = fitKappa(counts, alpha);
    return counts
      .filter(({ share }) => passes(share))
      .map((count) => logError([count], { kappa, alpha }) ** 2);
  });
  return Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / squares.length);
}

describe('the rep curve against published counts', () => {
  it('gives back the general table in whole repetitions, row by row', () => {
    for (const [percent, reps] of readReference('nuzzo-2024-general-table-rounded').rows) {
      expect(Math.round(repsAtShare(Number(percent) / 100))).toBe(reps);
    }
  });

  it('keeps every verified mean within the tolerance', () => {
    const missed = repCurveChecks().filter(({ counted, inside }) => counted && !inside);
    expect(missed).toEqual([]);
  });

  it('bends at alpha 1/2 better than at 1 or 0.7: overall, at 40 %, and at 70 to 85 %', () => {
    const all = () => true;
    const light = (share: number) => share === 0.4;
    const usual = (share: number) => share >= 0.7 && share <= 0.85;
    for (const passes of [all, light, usual]) {
      const half = errorOf(0.5, passes);
      expect(half).toBeLessThan(errorOf(0.7, passes));
      expect(half).toBeLessThan(errorOf(1, passes));
    }
    const verified = several.filter(({ standing }) => standing === 'verified');
    expect(errorOf(0.5, all, verified)).toBeLessThan(errorOf(1, all, verified));
  });

  it('shows its errors by bend', () => {
    const table = [1, 0.7, 0.5, 0.3].map((alpha) => ({
      alpha,
      all: errorOf(alpha, () => true).toFixed(3),
      at40: errorOf(alpha, (share) => share === 0.4).toFixed(3),
      from70: errorOf(alpha, (share) => share >= 0.7).toFixed(3),
    }));
    console.table(table);
    expect(Number(table[2]?.all)).toBeLessThan(0.13);
  });

  it('lies inside the mean and two SD of groups that lifted one share only', () => {
    const squat = enduranceCurves.squat;
    const single = groups.filter(
      ({ dataSet }) => dataSet.startsWith('cooke') || dataSet.startsWith('shimano'),
    );
    for (const { counts } of single) {
      for (const { share, reps, sd = 0 } of counts) {
        expect(Math.abs(repsAtShare(share, squat) - reps)).toBeLessThan(2 * sd);
      }
    }
    const [, , mean, sd] = readReference('spreuwenberg-2006-order').rows[0] ?? [];
    expect(Math.abs(repsAtShare(0.85, squat) - Number(mean))).toBeLessThan(2 * Number(sd));
  });

  it('puts the 7 to 10RM of a knee extension between untrained and trained', () => {
    const row = readReference('braith-1993-training-shift').rows[0] ?? [];
    const share = 100 * shareForReps(8.5, enduranceCurves['leg-isolation']);
    expect(share).toBeGreaterThan(Number(row[1]));
    expect(share).toBeLessThan(Number(row[2]));
  });

  it('keeps the order that was verified: leg press above bench press, decreasing with load', () => {
    for (const share of [0.4, 0.6, 0.8, 0.95]) {
      expect(repsAtShare(share, enduranceCurves['leg-press'])).toBeGreaterThan(
        repsAtShare(share, enduranceCurves.press),
      );
    }
    const counts = [0.95, 0.8, 0.6, 0.4].map((share) => repsAtShare(share));
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
  });
});

describe('the curves to start from', () => {
  const classes = {
    squat: /squat/,
    'leg-press': /^leg press/,
    hinge: /^deadlift/,
    press: /^bench press/,
    pull: /^lat pulldown/,
    'leg-isolation': /^(knee extension|leg curl)/,
    'arm-isolation': /^arm curl/,
    trunk: /^sit-up/,
  } as const;

  for (const [name, pattern] of Object.entries(classes)) {
    it(`are the weighted means of the published groups: ${name}`, () => {
      const members = groups
        .filter(({ group }) => pattern.test(group))
        .map(({ counts, standing }) => ({
          lnKappa: Math.log(fitKappa(counts, 0.5)),
          weight: standing === 'verified' ? 2 : 1,
        }));
      const weight = members.reduce((sum, one) => sum + one.weight, 0);
      const mean = members.reduce((sum, one) => sum + one.weight * one.lnKappa, 0) / weight;
      const square = members.reduce((sum, one) => sum + one.weight * (one.lnKappa - mean) ** 2, 0);
      const curve = enduranceCurves[name as keyof typeof classes];
      // 3 %: the table is rounded to whole numbers
      expect(curve.kappa / Math.exp(mean)).toBeGreaterThan(0.97);
      expect(curve.kappa / Math.exp(mean)).toBeLessThan(1.03);
      // within a group people spread by about 0.3, as in the squat at 70 % (14 +- 4, repeat error off)
      expect(Math.abs(curve.kappaLogSd - Math.hypot(0.3, Math.sqrt(square / weight)))).toBeLessThan(
        0.06,
      );
    });
  }

  it('spread for an unknown lift by lift and by person together', () => {
    const kappas = several.map(({ counts }) => Math.log(fitKappa(counts, 0.5)));
    const mean = kappas.reduce((sum, one) => sum + one, 0) / kappas.length;
    const sd = Math.sqrt(kappas.reduce((sum, one) => sum + (one - mean) ** 2, 0) / kappas.length);
    expect(Math.abs(generalCurve.kappaLogSd - sd)).toBeLessThan(0.08);
  });
});
