import { describe, expect, it } from 'vitest';
import { worse } from './judge.ts';

const baseline = { ratios: { ramp: 400 }, sizes: { tempo: 3000 } };

describe('a benchmark against its baseline', () => {
  it('passes what is as it was, better, a little worse, or new', () => {
    expect(worse(baseline, [{ id: 'ramp', value: 210 }], [{ id: 'tempo', bytes: 3060 }])).toEqual(
      [],
    );
    expect(worse(baseline, [{ id: 'new', value: 1 }], [{ id: 'new', bytes: 9e9 }])).toEqual([]);
  });

  it('names what fell by more than half, or grew by more than 2 %', () => {
    expect(worse(baseline, [{ id: 'ramp', value: 199 }], [{ id: 'tempo', bytes: 3061 }])).toEqual([
      'ramp: 199, was 400',
      'tempo: 3061 bytes, was 3000',
    ]);
  });

  it('holds a wanted figure whatever the baseline says', () => {
    expect(worse(baseline, [{ id: 'new', value: 99, atLeast: 100 }], [])).toEqual([
      'new: 99, wanted at least 100',
    ]);
  });
});
