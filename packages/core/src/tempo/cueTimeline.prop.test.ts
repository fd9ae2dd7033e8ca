import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cueTimeline } from './cueTimeline.ts';
import { phasesOfRep } from './phasesOfRep.ts';
import { secondsPerSet } from './secondsPerSet.ts';
import { starts, tempos } from './tempoArbitraries.testing.ts';

const reps = fc.integer({ min: 1, max: 100 });

describe('cueTimeline', () => {
  it('ends when secondsPerSet says, each cue beginning where the one before ends', () => {
    fc.assert(
      fc.property(tempos, reps, starts, (tempo, count, startsWith) => {
        const { cues, endSeconds } = cueTimeline(tempo, { reps: count, startsWith });
        expect(endSeconds).toBe(secondsPerSet(tempo, count, { startsWith, lastPause: 'counted' }));
        const starting = cues.map((cue) => Math.round(cue.atSeconds * 1000));
        const ending = cues.map((cue) => Math.round((cue.atSeconds + cue.lastsSeconds) * 1000));
        expect(starting[0]).toBe(0);
        expect(starting.slice(1)).toEqual(ending.slice(0, -1));
        expect(ending.at(-1)).toBe(Math.round(endSeconds * 1000));
      }),
    );
  });

  it('has every count of every phase once, in the order of the repetition', () => {
    fc.assert(
      fc.property(tempos, reps, starts, (tempo, count, startsWith) => {
        const { cues } = cueTimeline(tempo, { reps: count, startsWith });
        const phases = phasesOfRep(tempo, { startsWith }).map(({ phase }) => phase);
        const firsts = cues.filter((cue) => cue.count === 1).map((cue) => cue.phase);
        expect(firsts).toEqual(Array.from({ length: count }, () => phases).flat());
        const lasts = cues.filter((cue) => cue.count === cue.counts);
        expect(lasts).toHaveLength(firsts.length);
      }),
    );
  });
});
