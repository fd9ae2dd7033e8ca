import { describe, expect, it } from 'vitest';
import { parseTempo } from './parseTempo.ts';
import type { Tempo, TempoOrder } from './Tempo.ts';

type Parts = readonly [number, number, number | 'X', number];

function tempo([lower, pauseAfterLower, lift, pauseAfterLift]: Parts): Tempo {
  return {
    lowerSeconds: lower,
    pauseAfterLowerSeconds: pauseAfterLower,
    liftSeconds: lift,
    pauseAfterLiftSeconds: pauseAfterLift,
  };
}

function problemOf(text: string, order: TempoOrder = 'lower-first') {
  const parsed = parseTempo(text, { order });
  if (parsed.ok) throw new Error(`read as ${JSON.stringify(parsed.value)}`);
  return parsed.problems;
}

describe('parseTempo', () => {
  // As gyms write them; read by the trade's order: lower, pause, lift, pause.
  it.each<[string, Parts]>([
    ['30X0', [3, 0, 'X', 0]],
    ['31×1', [3, 1, 'X', 1]],
    ['31x1', [3, 1, 'X', 1]],
    ['4-0-1-0', [4, 0, 1, 0]],
    ['40X0', [4, 0, 'X', 0]],
    ['21X0', [2, 1, 'X', 0]],
    ['321', [3, 2, 1, 0]],
    ['13X1', [1, 3, 'X', 1]],
    ['4121', [4, 1, 2, 1]],
    ['3:1:1:0', [3, 1, 1, 0]],
    ['5 0 5 0', [5, 0, 5, 0]],
    ['3/0/X/0', [3, 0, 'X', 0]],
    ['3.0.1.0', [3, 0, 1, 0]],
    ['3,0,1,0', [3, 0, 1, 0]],
    ['3, 0, 1, 0', [3, 0, 1, 0]],
    ['4–0—1−0', [4, 0, 1, 0]],
    [' 4 - 0 - x - 0 ', [4, 0, 'X', 0]],
    ['10-0-10-0', [10, 0, 10, 0]],
    ['2.5-0-1-0', [2.5, 0, 1, 0]],
    ['2,5/0,5/1/0', [2.5, 0.5, 1, 0]],
    ['2,5 0 1 0', [2.5, 0, 1, 0]],
    ['3-2-1', [3, 2, 1, 0]],
    ['5-0-0-0', [5, 0, 0, 0]],
    ['60-0-60-0', [60, 0, 60, 0]],
  ])('reads %j', (text, parts) => {
    const parsed = parseTempo(text);
    expect(parsed.ok && parsed.value.tempo).toEqual(tempo(parts));
  });

  it('says which phases it read', () => {
    expect(parseTempo('321')).toMatchObject({
      value: { phasesRead: ['lower', 'pause-after-lower', 'lift'] },
    });
    expect(parseTempo('3010')).toMatchObject({
      value: { phasesRead: ['lower', 'pause-after-lower', 'lift', 'pause-after-lift'] },
    });
    expect(parseTempo('1-0-3', { order: 'lift-first' })).toMatchObject({
      value: { phasesRead: ['lift', 'pause-after-lift', 'lower'], tempo: tempo([3, 0, 1, 0]) },
    });
  });

  it('reads the lift first when told so, and only then', () => {
    const parsed = parseTempo('X132', { order: 'lift-first' });
    expect(parsed.ok && parsed.value.tempo).toEqual(tempo([3, 2, 'X', 1]));
    expect(parseTempo('1030').ok && parseTempo('1030')).toMatchObject({
      value: { tempo: tempo([1, 0, 3, 0]) },
    });
  });

  it.each<[string, string, string]>([
    ['', 'tempo.empty', 'for example 3-0-1-0'],
    ['  ', 'tempo.empty', 'for example 3-0-1-0'],
    ['31', 'tempo.parts', 'this has 2'],
    ['3.5', 'tempo.parts', 'this has 1'],
    ['100100', 'tempo.parts', '10-0-2.5-0 with separators'],
    ['3-0-1-0-2', 'tempo.parts', 'this has 5'],
    ['2.5.0.1.0', 'tempo.parts', 'this has 5'],
    ['3--1-0', 'tempo.not-seconds', 'pause after lowering in seconds'],
    ['3-0-A-0', 'tempo.not-seconds', 'the lift in seconds, for example 3, or X, not "A"'],
    ['30V0', 'tempo.not-seconds', 'or X, not "V"'],
    ['3s-0-1-0', 'tempo.not-seconds', 'the lowering in seconds, for example 3, not "3s"'],
    ['3-0-XX-0', 'tempo.not-seconds', 'not "XX"'],
    ['3X10', 'tempo.fast-only-lift', 'pause after lowering in seconds; X is for the lift only'],
    ['X030', 'tempo.fast-only-lift', 'choose the other order'],
    ['0000', 'tempo.no-movement', 'at least 0.2 seconds'],
    ['0-5-0-0', 'tempo.no-movement', 'a pause alone is a hold'],
    ['90-0-1-0', 'tempo.phase-too-long', 'Keep the lowering to 60 seconds or less'],
    ['60-60-60-60', 'tempo.rep-too-long', 'to 120 seconds; this one takes 240'],
    ['1.0001-0-1-0', 'tempo.too-fine', 'at most 3 decimals'],
  ])('refuses %j with words that help', (text, code, help) => {
    const [problem] = problemOf(text);
    expect(problem?.code).toBe(code);
    expect(problem?.message).toContain(help);
    expect(problem?.path).toEqual([]);
  });

  it('names every part that is wrong', () => {
    expect(problemOf('a-b-1-0').map((problem) => problem.params?.phase)).toEqual([
      'lower',
      'pause-after-lower',
    ]);
  });

  it('points an X at the lowering to the other order, either way', () => {
    expect(problemOf('30X0', 'lift-first')[0]?.message).toContain('choose the other order');
  });
});
