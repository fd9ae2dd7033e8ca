import { describe, expect, it } from 'vitest';
import { phasesOfRep } from './phasesOfRep.ts';
import { secondsPerRep } from './secondsPerRep.ts';
import { secondsPerSet } from './secondsPerSet.ts';
import { secondsUnderLoad } from './secondsUnderLoad.ts';
import type { Tempo } from './Tempo.ts';

const squat: Tempo = {
  lowerSeconds: 4,
  pauseAfterLowerSeconds: 1,
  liftSeconds: 2,
  pauseAfterLiftSeconds: 1,
};
const fast: Tempo = {
  lowerSeconds: 3,
  pauseAfterLowerSeconds: 0,
  liftSeconds: 'X',
  pauseAfterLiftSeconds: 0,
};

describe('seconds of a repetition and a set', () => {
  it('times ten squats at 4-1-2-1 both ways: 10 × 8 = 80, and 79 without the last pause', () => {
    expect(secondsPerRep(squat)).toBe(8);
    expect(secondsPerSet(squat, 10, { lastPause: 'counted' })).toBe(80);
    expect(secondsPerSet(squat, 10, { lastPause: 'left-out' })).toBe(79);
  });

  it('times eight reps at 4-2-1-0: 8 × 7 = 56, with no last pause to leave out', () => {
    const asked = { ...squat, pauseAfterLowerSeconds: 2, liftSeconds: 1, pauseAfterLiftSeconds: 0 };
    expect(secondsPerSet(asked, 8, { lastPause: 'counted' })).toBe(56);
    expect(secondsPerSet(asked, 8, { lastPause: 'left-out' })).toBe(56);
  });

  it('leaves out the pause after lowering where repetitions start with the lift', () => {
    const deadlift = { ...squat, pauseAfterLowerSeconds: 3 };
    const timing = { startsWith: 'lift', lastPause: 'left-out' } as const;
    expect(secondsPerSet(deadlift, 2, timing)).toBe(17); // 2 × (4 + 3 + 2 + 1) - 3
  });

  it('counts a fast lift as the seconds stated, 1 unless told otherwise', () => {
    expect(secondsPerRep(fast)).toBe(4);
    expect(secondsPerRep(fast, { fastLiftSeconds: 0.5 })).toBe(3.5);
    expect(() => secondsPerRep(fast, { fastLiftSeconds: 0 })).toThrow(/fastLiftSeconds/);
    expect(() => secondsPerRep(fast, { fastLiftSeconds: 2 })).toThrow(/fastLiftSeconds/);
  });

  it('takes no time for no reps, and refuses parts of one', () => {
    expect(secondsPerSet(squat, 0, { lastPause: 'left-out' })).toBe(0);
    expect(() => secondsPerSet(squat, 2.5, { lastPause: 'counted' })).toThrow(/reps/);
    expect(() => secondsPerSet(squat, -1, { lastPause: 'counted' })).toThrow(/reps/);
    expect(() => secondsUnderLoad(squat, 1001, { lastPause: 'counted' })).toThrow(/reps/);
  });

  it('adds tenths without drift', () => {
    const broken = { ...fast, lowerSeconds: 0.1, liftSeconds: 0.2 };
    expect(secondsPerSet(broken, 1000, { lastPause: 'counted' })).toBe(300);
  });

  it('leaves resting pauses out of the seconds under load, once', () => {
    const standing = { lastPause: 'counted', restingPauses: ['pause-after-lift'] } as const;
    expect(secondsUnderLoad(squat, 10, { lastPause: 'counted' })).toBe(80);
    expect(secondsUnderLoad(squat, 10, standing)).toBe(70);
    expect(secondsUnderLoad(squat, 10, { ...standing, lastPause: 'left-out' })).toBe(70);
    expect(secondsUnderLoad(squat, 0, standing)).toBe(0);
  });
});

describe('phasesOfRep', () => {
  it('starts a squat with the lowering and a chin-up with the lift', () => {
    expect(phasesOfRep(fast).map((part) => part.phase)).toEqual(['lower', 'lift']);
    expect(phasesOfRep(fast, { startsWith: 'lift' }).map((part) => part.phase)).toEqual([
      'lift',
      'lower',
    ]);
  });

  it('says what is fast and leaves out what takes no time', () => {
    expect(phasesOfRep(fast)).toEqual([
      { phase: 'lower', seconds: 3, isFast: false },
      { phase: 'lift', seconds: 1, isFast: true },
    ]);
    expect(phasesOfRep(squat)).toHaveLength(4);
  });
});
