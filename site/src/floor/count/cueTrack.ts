import { cueTimeline } from '@windlass/core/tempo';
import type { FloorLift } from '../session/FloorSession.ts';
import { countSounds, restSounds } from './countSounds.ts';
import type { Sound } from './Sound.ts';

/** A recording of a lift's sets to train by. */
export interface CueTrack {
  readonly sounds: readonly Sound[];
  readonly seconds: number;
}

interface TrackQuestion {
  readonly lift: Pick<FloorLift, 'tempo' | 'startsWith' | 'window'>;
  readonly reps: number;
  /** After each set, so there are as many; the one after the last is not in the track. */
  readonly restsSeconds: readonly number[];
  readonly leadInSeconds: number;
}

/** Silence before the first sound and after the last, so that no player cuts into them. */
const MARGIN_SECONDS = 1;

/**
 * The sounds of some sets as one track: each counted in, counted to its last repetition and closed,
 * with the rest between. Sets that end before that go on with the rest.
 */
export function cueTrack({ lift, reps, restsSeconds, leadInSeconds }: TrackQuestion): CueTrack {
  const { tempo, startsWith, window } = lift;
  const timeline = cueTimeline(tempo, { reps, startsWith, leadInSeconds });
  const set = countSounds(timeline, {
    repsBefore: 0,
    windowFrom: window.minReps,
    endsItself: true,
  });
  const whole = leadInSeconds + timeline.endSeconds;
  const sounds: Sound[] = [];
  let from = MARGIN_SECONDS;
  for (const [place, restSeconds] of restsSeconds.entries()) {
    sounds.push(...later(set, from + leadInSeconds));
    from += whole;
    if (place === restsSeconds.length - 1) break;
    const rest = Math.max(0, restSeconds - leadInSeconds);
    sounds.push(...later(restSounds(rest), from));
    from += rest;
  }
  return { sounds, seconds: from + MARGIN_SECONDS };
}

function later(sounds: readonly Sound[], seconds: number): readonly Sound[] {
  return sounds.map((sound) => ({ ...sound, atSeconds: sound.atSeconds + seconds }));
}
