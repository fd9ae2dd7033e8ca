import type { CueTimeline } from '@windlass/core/tempo';
import type { Sound, ToneName } from './Sound.ts';

interface CountSounds {
  /** Repetitions of the set that are over before the first one that is counted. */
  readonly repsBefore: number;
  /** The first repetition that is in the window; left out where none is to be marked. */
  readonly windowFrom?: number;
  /** The count ends by itself, and says so. */
  readonly endsItself: boolean;
}

const toneOf = {
  'lead-in': 'lead-in',
  lift: 'lift',
  lower: 'lower',
  'pause-after-lift': 'pause',
  'pause-after-lower': 'pause',
} as const satisfies Record<string, ToneName>;

/** What is heard of a count, in order of time. */
export function countSounds(
  { cues, endSeconds }: CueTimeline,
  { repsBefore, windowFrom, endsItself }: CountSounds,
): readonly Sound[] {
  let rep = 0;
  const sounds = cues.flatMap((cue): readonly Sound[] => {
    const { atSeconds, phase, count } = cue;
    const isFirst = count === 1 || phase === 'lead-in';
    const own: Sound = { atSeconds, tone: isFirst ? toneOf[phase] : 'second' };
    const isNewRep = cue.rep > rep;
    rep = cue.rep;
    const isMarked = isNewRep && windowFrom !== undefined && repsBefore + rep >= windowFrom;
    return isMarked ? [own, { atSeconds, tone: 'window' }] : [own];
  });
  return endsItself ? [...sounds, { atSeconds: endSeconds, tone: 'end' }] : sounds;
}

const NEAR_SECONDS = [10, 3, 2, 1];

/** What is heard of a rest: its last ten seconds begin, its last three, its end. */
export function restSounds(seconds: number): readonly Sound[] {
  const near = NEAR_SECONDS.filter((left) => left < seconds).map(
    (left): Sound => ({
      atSeconds: seconds - left,
      tone: 'rest-near',
    }),
  );
  return [...near, { atSeconds: seconds, tone: 'rest-over' }];
}

/** What is heard of a hold or a lowering: its seconds, and its end. */
export function secondsSounds(tone: 'lower' | 'pause', seconds: number): readonly Sound[] {
  const counted = Array.from(
    { length: Math.ceil(seconds) },
    (_, second): Sound => ({
      atSeconds: second,
      tone: second === 0 ? tone : 'second',
    }),
  );
  return [...counted, { atSeconds: seconds, tone: 'end' }];
}
