import { describe, expect, it } from 'vitest';
import { matchingOptions } from './matchingOptions.ts';

const options = ['Bent-over row, barbell', 'Machine row', 'Chin-up', 'Row on a cable'].map(
  (label) => ({ id: label, label }),
);
const found = (typed: string) => matchingOptions(options, typed).map(({ label }) => label);

describe('matchingOptions', () => {
  it('takes words in any order, with or without hyphens', () => {
    expect(found('row over')).toEqual(['Bent-over row, barbell']);
    expect(found('chin up')).toEqual(['Chin-up']);
  });

  it('puts first what begins like it, and keeps the order otherwise', () => {
    expect(found('row')).toEqual(['Row on a cable', 'Bent-over row, barbell', 'Machine row']);
  });

  it('gives all for nothing typed, and none where nothing fits', () => {
    expect(found('')).toHaveLength(4);
    expect(found('squat')).toEqual([]);
  });
});
