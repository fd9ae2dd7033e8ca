import { phasesOfRep } from '@windlass/core/tempo';
import { describe, expect, it } from 'vitest';
import { countAt } from './countAt.ts';

/** Lift 2 s, pause 1 s, lower 3 s: 6 s a repetition. */
const phases = phasesOfRep(
  { lowerSeconds: 3, pauseAfterLowerSeconds: 0, liftSeconds: 2, pauseAfterLiftSeconds: 1 },
  { startsWith: 'lift' },
);
const at = (seconds: number) => countAt(phases, seconds * 1000, 8);

describe('countAt', () => {
  it('counts in', () => {
    expect(at(-2.5)).toEqual({ kind: 'lead-in', secondsLeft: 2.5 });
  });

  it.each([
    [0, 0, 'lift', 2],
    [1.5, 0, 'lift', 0.5],
    [2, 0, 'pause-after-lift', 1],
    [3, 0, 'lower', 3],
    [5.999, 0, 'lower', 0.001],
    [6, 1, 'lift', 2],
    [6 * 7 + 3.25, 7, 'lower', 2.75],
  ] as const)(
    'at %s s %s are over and it is the %s for %s s more',
    (seconds, over, phase, left) => {
      const now = at(seconds);
      expect(now).toMatchObject({ kind: 'rep', over, phase: { phase } });
      expect(now.kind === 'rep' && now.secondsLeft).toBeCloseTo(left, 9);
    },
  );

  it('names the phase after, across the end of a repetition', () => {
    const now = at(4);
    expect(now.kind === 'rep' && now.next.phase).toBe('lift');
  });

  it('is over after the last', () => {
    expect(at(48)).toEqual({ kind: 'over', over: 8 });
    expect(at(4800)).toEqual({ kind: 'over', over: 8 });
  });
});
