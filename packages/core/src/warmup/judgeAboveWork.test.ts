import { describe, expect, it } from 'vitest';
import { type AboveWorkQuestion, judgeAboveWork } from './judgeAboveWork.ts';

const curve = (kappa: number, kappaLogSd = 0) => ({ kappa, alpha: 0.5, kappaLogSd, sources: [] });
const unmet = (question: Partial<AboveWorkQuestion>) =>
  judgeAboveWork({
    experience: 'trained',
    loadCanBeStopped: true,
    curve: curve(40),
    shareAbove: 0.64, // 1 + 40 × 0.36 / 0.8 = 19 repetitions
    ...question,
  })
    .filter(({ met }) => !met)
    .map(({ id }) => id);

describe('judgeAboveWork', () => {
  it('asks for experience, a way to stop the load, and the load itself', () => {
    expect(unmet({})).toEqual([]);
    expect(unmet({ experience: 'new' })).toEqual(['experience']);
    expect(unmet({ loadCanBeStopped: false })).toEqual(['load-can-be-stopped']);
    expect(unmet({ shareAbove: undefined })).toEqual(['load-exists', 'well-short-of-failure']);
  });

  // At a quarter of the one-rep max 1 + kappa × 0.75 / 0.5 repetitions: 3 for a kappa of 4/3.
  it('asks for two repetitions left after the one, exactly two being enough', () => {
    expect(unmet({ shareAbove: 0.25, curve: curve(4 / 3) })).toEqual([]);
    expect(unmet({ shareAbove: 0.25, curve: curve(1.33) })).toEqual(['well-short-of-failure']);
  });

  it('goes by the lifter of ten with the second fewest repetitions', () => {
    const spread = Math.exp(1.2816 * 0.3);
    expect(unmet({ shareAbove: 0.25, curve: curve(1.34 * spread, 0.3) })).toEqual([]);
    expect(unmet({ shareAbove: 0.25, curve: curve(1.33 * spread, 0.3) })).toHaveLength(1);
  });

  it('refuses a share that is none', () => {
    for (const shareAbove of [-0.1, 2.1, Number.NaN]) {
      expect(() => unmet({ shareAbove })).toThrow(/^judgeAboveWork: shareAbove /);
    }
  });
});
