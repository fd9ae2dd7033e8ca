import { describe, expect, it } from 'vitest';
import { tempoFile, tempoOrderAt, tempoTextAt } from './tempoEdits.ts';

const phases = {
  lowerSeconds: 3,
  pauseAfterLowerSeconds: 0,
  liftSeconds: 'X',
  pauseAfterLiftSeconds: 1,
} as const;

describe('tempoTextAt', () => {
  it.each([
    ['3-0-1-0', '3-0-1-0'],
    [{ code: '1-0-3-0', order: 'lift-first' }, '1-0-3-0'],
    [phases, '3-0-X-1'],
    [{ ...phases, lowerSeconds: 'long' }, ''],
  ])('shows %j as "%s"', (tempo, text) => {
    expect(tempoTextAt({ tempo }, ['tempo'])).toBe(text);
  });
});

describe('tempoFile', () => {
  it('names the order only where lifting comes first, and is read back', () => {
    expect(tempoFile('3-0-1-0', 'lower-first')).toBe('3-0-1-0');
    const tempo = tempoFile('1-0-3-0', 'lift-first');
    expect(tempoOrderAt({ tempo }, ['tempo'])).toBe('lift-first');
    expect(tempoTextAt({ tempo }, ['tempo'])).toBe('1-0-3-0');
  });
});
