import { describe, expect, it } from 'vitest';
import { cueTrack } from './cueTrack.ts';

const lift = {
  tempo: { lowerSeconds: 3, pauseAfterLowerSeconds: 0, liftSeconds: 2, pauseAfterLiftSeconds: 0 },
  startsWith: 'lift',
  window: { minReps: 8, maxReps: 11 },
} as const;

describe('cueTrack', () => {
  it('counts in, counts, rests and counts again, by hand arithmetic', () => {
    const { sounds, seconds } = cueTrack({
      lift,
      reps: 11,
      restsSeconds: [150, 0],
      leadInSeconds: 5,
    });
    const at = (tone: string) =>
      sounds.filter((one) => one.tone === tone).map(({ atSeconds }) => atSeconds);
    // 1 s of silence, 5 s lead-in, 11 reps of 5 s: the first set ends at 61 s. The second lead-in
    // begins 145 s later, so that its first repetition comes after 150 s of rest.
    expect(at('lead-in').slice(0, 6)).toEqual([1, 2, 3, 4, 5, 206]);
    expect(at('lift').slice(0, 2)).toEqual([6, 11]);
    expect(at('lift')[11]).toBe(211);
    expect(at('end')).toEqual([61, 266]);
    expect(at('rest-over')).toEqual([206]);
    expect(at('window')).toHaveLength(8);
    expect(seconds).toBe(267);
  });

  it('of one set has no rest in it', () => {
    const { sounds } = cueTrack({ lift, reps: 8, restsSeconds: [120], leadInSeconds: 3 });
    expect(sounds.some(({ tone }) => tone === 'rest-over')).toBe(false);
  });

  it('is in order of time', () => {
    const { sounds } = cueTrack({ lift, reps: 11, restsSeconds: [150, 90, 0], leadInSeconds: 5 });
    const times = sounds.map(({ atSeconds }) => atSeconds);
    expect(times).toEqual(times.toSorted((a, b) => a - b));
  });
});
