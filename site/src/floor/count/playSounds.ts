import { audioOffset } from './audioOffset.ts';
import type { Sound } from './Sound.ts';
import { scheduleTone } from './scheduleTone.ts';

/**
 * How far ahead sounds are handed to the audio clock, in milliseconds. Timers of a hidden tab may
 * come once a minute only, so three minutes leave it two to spare; most sets are shorter.
 */
const AHEAD = 180_000;
const REFILL = 1000;
/** The clocks have drifted apart, or the sound was interrupted, when they are off by more. */
const DRIFT = 8;
/** A sound that comes later than this is left out: a count that stutters misleads. */
const LATEST = 30;

interface Playing {
  readonly context: AudioContext;
  readonly sounds: readonly Sound[];
  /** Second 0 of the sounds, in milliseconds of `now`. */
  readonly startsAt: number;
  readonly now: () => number;
}

interface Planned {
  readonly place: number;
  /** Second of the audio clock. */
  readonly when: number;
  readonly source: AudioScheduledSourceNode;
}

/**
 * Plays sounds at their time by the audio clock, however busy or hidden the page is.
 *
 * @returns what ends it at once.
 */
export function playSounds({ context, sounds, startsAt, now }: Playing): () => void {
  const offset = audioOffset(context, now);
  let used: number | undefined;
  let planned: readonly Planned[] = [];
  let next = 0;

  const silence = (after: number) => {
    const gone = planned.filter(({ when }) => when > after);
    for (const { source } of gone) source.stop();
    planned = planned.filter(({ when }) => when <= after);
    next = Math.min(next, ...gone.map(({ place }) => place));
  };
  const fill = () => {
    if (context.state !== 'running') return;
    const time = now();
    const fresh = offset();
    if (used === undefined || Math.abs(fresh - used) > DRIFT) {
      silence(context.currentTime + LATEST / 1000);
      used = fresh;
    }
    planned = planned.filter(({ when }) => when > context.currentTime - 1);
    for (let sound = sounds[next]; sound; next += 1, sound = sounds[next]) {
      const at = startsAt + sound.atSeconds * 1000;
      if (at > time + AHEAD) break;
      if (at < time - LATEST) continue;
      const when = Math.max((at - used) / 1000, context.currentTime);
      const source = scheduleTone(context, sound.tone, when);
      planned = [...planned, { place: next, when, source }];
    }
  };

  fill();
  const timer = setInterval(fill, REFILL);
  context.addEventListener('statechange', fill);
  return () => {
    clearInterval(timer);
    context.removeEventListener('statechange', fill);
    silence(Number.NEGATIVE_INFINITY);
  };
}
