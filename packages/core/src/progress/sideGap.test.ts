import { describe, expect, it } from 'vitest';
import { sessionOn } from './gym.testing.ts';
import { sideGap } from './sideGap.ts';

describe('sideGap', () => {
  const session = (day: number, left: number, right: number) =>
    sessionOn(`2026-03-0${day}`, { value: 70, unit: 'lb' }, [Math.min(left, right)], {
      sides: { left, right },
    });

  it('calls a stable gap of two repetitions ordinary', () => {
    const gap = sideGap([session(2, 8, 10), session(5, 8, 10), session(9, 8, 10)]);
    expect(gap).toMatchObject({ kind: 'gap', weaker: 'left', reps: 2, standing: 'ordinary' });
  });

  it('flags a gap that grows', () => {
    const gap = sideGap([session(2, 9, 10), session(5, 8, 10), session(9, 7, 11)]);
    expect(gap).toMatchObject({ kind: 'gap', standing: 'growing' });
  });

  it('flags a large one, and the other side', () => {
    expect(sideGap([session(2, 20, 4)])).toMatchObject({ weaker: 'right', standing: 'large' });
  });

  it('takes the sides for level, and sessions without two of them for none', () => {
    expect(sideGap([session(2, 9, 9)])).toMatchObject({
      weaker: 'neither',
      reps: 0,
      percent: 0,
      standing: 'ordinary',
    });
    expect(sideGap([])).toEqual({ kind: 'no-sides' });
    const plain = sessionOn('2026-03-09', { value: 70, unit: 'lb' }, [8]);
    expect(sideGap([plain])).toEqual({ kind: 'no-sides' });
    expect(sideGap([session(2, 8, 10), plain])).toMatchObject({ kind: 'gap', reps: 2 });
  });

  it('gives repetitions and the strength that they stand for', () => {
    // reps = 1 + 40 (1 - s) / s: 11 are a share of 0.8, 1 a share of 1; a quarter more
    const curve = { kappa: 40, alpha: 1 };
    const gap = sideGap([session(2, 1, 11)], curve);
    expect(gap).toMatchObject({ weaker: 'left', reps: 10 });
    expect(gap.kind === 'gap' && gap.percent).toBeCloseTo(25, 9);
    const other = sideGap([session(2, 11, 1)], curve);
    expect(other.kind === 'gap' && other.percent).toBeCloseTo(20, 9);
    expect(sideGap([session(2, 0, 11)], curve)).toMatchObject({ reps: 11, standing: 'large' });
  });

  it('is ordinary up to 15 % of strength', () => {
    // with kappa 41 and alpha 1 one repetition against r are 100 (r - 1) / 41 %
    const curve = { kappa: 41, alpha: 1 };
    expect(sideGap([session(2, 1, 7)], curve)).toMatchObject({ standing: 'ordinary' });
    expect(sideGap([session(2, 1, 8)], curve)).toMatchObject({ standing: 'large' });
  });

  it('grows only over three sessions in a row, by three percent at least', () => {
    // one repetition more of the right side are 2.5 % more by this curve
    const curve = { kappa: 40, alpha: 1 };
    const standing = (...rights: readonly number[]) => {
      const gap = sideGap(
        rights.map((right, i) => session(2 + i, 1, right)),
        curve,
      );
      return gap.kind === 'gap' && gap.standing;
    };
    expect(standing(2, 3, 4)).toBe('growing');
    expect(standing(1, 2, 4)).toBe('growing');
    expect(standing(2, 4)).toBe('ordinary');
    expect(standing(2, 2, 4)).toBe('ordinary');
    expect(standing(3, 2, 5)).toBe('ordinary');
    expect(standing(1, 5, 4)).toBe('ordinary');
    expect(standing(7, 4, 5, 6)).toBe('growing');
    const mirrored = [2, 3, 4].map((left, i) => session(2 + i, left, 1));
    expect(sideGap(mirrored, curve)).toMatchObject({ weaker: 'right', standing: 'growing' });
    // 1 % a session: 2 % in all
    const slow = { kappa: 100, alpha: 1 };
    expect(
      sideGap(
        [2, 3, 4].map((right, i) => session(2 + i, 1, right)),
        slow,
      ),
    ).toMatchObject({
      standing: 'ordinary',
    });
  });
});
