import { describe, expect, it } from 'vitest';
import { cueTimeline } from './cueTimeline.ts';
import type { Tempo } from './Tempo.ts';

const fast: Tempo = {
  lowerSeconds: 3,
  pauseAfterLowerSeconds: 0,
  liftSeconds: 'X',
  pauseAfterLiftSeconds: 0,
};

describe('cueTimeline', () => {
  it('tells six chin-ups at 30X0 to go up first, and to lower at 1, 5, 9, 13, 17, 21 s', () => {
    const { cues, endSeconds } = cueTimeline(fast, { reps: 6, startsWith: 'lift' });
    expect(cues[0]).toMatchObject({ phase: 'lift', atSeconds: 0, rep: 1 });
    const lowerings = cues.filter((cue) => cue.phase === 'lower' && cue.count === 1);
    expect(lowerings.map((cue) => cue.atSeconds)).toEqual([1, 5, 9, 13, 17, 21]);
    expect(endSeconds).toBe(24);
  });

  it('tells a squat at the same tempo to go down first', () => {
    const { cues, endSeconds } = cueTimeline(fast, { reps: 6 });
    expect(cues[0]).toMatchObject({ phase: 'lower', atSeconds: 0, rep: 1 });
    expect(endSeconds).toBe(24);
  });

  it('counts inside phases and makes no cue of a phase of 0 s', () => {
    const { cues } = cueTimeline(fast, { reps: 1 });
    expect(cues.map((cue) => [cue.phase, cue.count, cue.counts, cue.atSeconds])).toEqual([
      ['lower', 1, 3, 0],
      ['lower', 2, 3, 1],
      ['lower', 3, 3, 2],
      ['lift', 1, 1, 3],
    ]);
  });

  it('counts a lead-in down to 0 without moving the repetitions', () => {
    const { cues, endSeconds } = cueTimeline(fast, { reps: 1, leadInSeconds: 3 });
    expect(cues.slice(0, 4).map((cue) => [cue.phase, cue.atSeconds])).toEqual([
      ['lead-in', -3],
      ['lead-in', -2],
      ['lead-in', -1],
      ['lower', 0],
    ]);
    expect(endSeconds).toBe(4);
  });

  it('gives a broken second to the last count, and half a second its own count', () => {
    const lengths = (lowerSeconds: number) =>
      cueTimeline({ ...fast, lowerSeconds }, { reps: 1 })
        .cues.filter((cue) => cue.phase === 'lower')
        .map((cue) => cue.lastsSeconds);
    expect(lengths(2.3)).toEqual([1, 1.3]);
    expect(lengths(2.5)).toEqual([1, 1, 0.5]);
    expect(lengths(0.4)).toEqual([0.4]);
  });

  it('is as exact in the hundredth repetition as in the first', () => {
    const broken = { ...fast, lowerSeconds: 0.1, liftSeconds: 0.2 };
    const { cues, endSeconds } = cueTimeline(broken, { reps: 100 });
    expect(cues.at(-1)).toMatchObject({ rep: 100, phase: 'lift', atSeconds: 29.8 });
    expect(endSeconds).toBe(30);
  });

  it('has nothing to say of no repetitions but the lead-in', () => {
    expect(cueTimeline(fast, { reps: 0 })).toEqual({ cues: [], endSeconds: 0 });
    expect(cueTimeline(fast, { reps: 0, leadInSeconds: 2 }).cues).toHaveLength(2);
  });

  it('refuses a lead-in that is not 0 to 60 seconds', () => {
    expect(() => cueTimeline(fast, { reps: 1, leadInSeconds: -1 })).toThrow(/leadInSeconds/);
  });
});
