import { describe, expect, it } from 'vitest';
import { checkTempo } from './checkTempo.ts';
import { parseTempo } from './parseTempo.ts';
import { phasesOfRep } from './phasesOfRep.ts';

const tempo = {
  lowerSeconds: 3,
  pauseAfterLowerSeconds: 0,
  liftSeconds: 1,
  pauseAfterLiftSeconds: 0,
};

function messages(text: string): string {
  const read = parseTempo(text);
  return read.ok ? '' : read.problems.map(({ message }) => message).join(' ');
}

describe('a tempo that is refused comes back with what its sentence is made of', () => {
  it.each([
    [
      { lowerSeconds: 61 },
      {
        code: 'tempo.phase-too-long',
        path: ['lowerSeconds'],
        params: { phase: 'lower', longest: 60 },
      },
    ],
    [
      { lowerSeconds: 0, liftSeconds: 0.1 },
      { code: 'tempo.no-movement', path: [], params: { shortest: 0.2 } },
    ],
    [
      { lowerSeconds: 60, pauseAfterLowerSeconds: 60 },
      { code: 'tempo.rep-too-long', path: [], params: { repSeconds: 121, longest: 120 } },
    ],
    [
      { lowerSeconds: 60, pauseAfterLowerSeconds: 59.5, liftSeconds: 'X' as const },
      { code: 'tempo.rep-too-long', params: { repSeconds: 120.5 } },
    ],
  ])('%o', (change, problem) => {
    const checked = checkTempo({ ...tempo, ...change });
    expect(checked.ok ? [] : checked.problems).toMatchObject([problem]);
  });

  it('counts the parts that were written', () => {
    const read = parseTempo('3-0');
    expect(read.ok ? [] : read.problems).toMatchObject([
      { code: 'tempo.parts', path: [], params: { parts: 2 } },
    ]);
  });

  it('points to the other order only where the lowering is X', () => {
    expect(messages('X-0-1-0')).toContain('choose the other order');
    expect(messages('3-X-1-0')).not.toContain('other order');
    expect(messages('3-X-1-0')).toMatch(/lift only\.$/);
  });

  it('takes no part with something before its number', () => {
    expect(messages('a3-0-1-0')).toContain('not "a3"');
  });
});

it('the least movement there is, 0.2 s, is a tempo', () => {
  expect(checkTempo({ ...tempo, lowerSeconds: 0.1, liftSeconds: 0.1 }).ok).toBe(true);
});

it('only the lift of an X tempo is fast, and parts may stand far apart', () => {
  const read = parseTempo('3 -  1  -X-   0');
  expect(read.ok && read.value.tempo).toEqual({
    ...tempo,
    pauseAfterLowerSeconds: 1,
    liftSeconds: 'X',
  });
  const phases = phasesOfRep({ ...tempo, pauseAfterLowerSeconds: 1, liftSeconds: 'X' });
  expect(phases.map(({ phase, isFast }) => [phase, isFast])).toEqual([
    ['lower', false],
    ['pause-after-lower', false],
    ['lift', true],
  ]);
});

it('a lift that takes its seconds is not fast, and blanks of any length part', () => {
  const read = parseTempo('3  0  1  0');
  expect(read.ok && read.value.tempo).toEqual(tempo);
  expect(phasesOfRep(tempo).map(({ isFast }) => isFast)).toEqual([false, false]);
});
