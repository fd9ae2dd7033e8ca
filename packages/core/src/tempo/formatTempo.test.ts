import { describe, expect, it } from 'vitest';
import { formatTempo } from './formatTempo.ts';
import type { Tempo } from './Tempo.ts';

const slow: Tempo = {
  lowerSeconds: 10,
  pauseAfterLowerSeconds: 0.5,
  liftSeconds: 4,
  pauseAfterLiftSeconds: 0,
};

describe('formatTempo', () => {
  it('writes the four parts with the separator asked for', () => {
    expect(formatTempo(slow)).toBe('10-0.5-4-0');
    expect(formatTempo(slow, { separator: '/' })).toBe('10/0.5/4/0');
    expect(formatTempo(slow, { order: 'lift-first', separator: ' ' })).toBe('4 0 10 0.5');
  });

  it('leaves separators out only where each part is one digit', () => {
    const quick = {
      ...slow,
      lowerSeconds: 3,
      pauseAfterLowerSeconds: 1,
      liftSeconds: 'X',
    } as const;
    expect(formatTempo(quick, { separator: 'none' })).toBe('31X0');
    expect(formatTempo(slow, { separator: 'none' })).toBe('10-0.5-4-0');
  });

  it('refuses what is no tempo', () => {
    expect(() => formatTempo({ ...slow, lowerSeconds: -1 })).toThrow(
      /formatTempo: Give the lowering/,
    );
  });
});
