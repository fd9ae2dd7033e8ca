import type { Cue } from '@windlass/core/tempo';
import { wallNow } from './wallClock.ts';

/** A cue that comes later than this, in milliseconds, is left out: it would speak of the past. */
const LATEST = 250;

/** Calls back at each cue, for what the audio clock cannot do: speaking and vibrating. */
export function followCues(
  cues: readonly Cue[],
  startsAt: number,
  onCue: (cue: Cue) => void,
): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const at = ({ atSeconds }: Cue) => startsAt + atSeconds * 1000;
  const wait = (place: number) => {
    const cue = cues[place];
    if (!cue) return;
    timer = setTimeout(
      () => {
        if (wallNow() - at(cue) < LATEST) onCue(cue);
        wait(place + 1);
      },
      Math.max(0, at(cue) - wallNow()),
    );
  };
  wait(cues.findIndex((cue) => at(cue) > wallNow() - LATEST));
  return () => clearTimeout(timer);
}
