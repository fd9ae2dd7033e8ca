import type { LiveSet, LiveStanding } from '@windlass/core/extension';
import { cueTimeline } from '@windlass/core/tempo';
import { useEffect } from 'preact/hooks';
import type { FloorLift } from '../session/FloorSession.ts';
import { countSounds, secondsSounds } from './countSounds.ts';
import { playSounds } from './playSounds.ts';
import type { Sound } from './Sound.ts';
import { wallNow } from './wallClock.ts';

/** Lets the stage of a set past failure be heard: the tempo, the seconds of a hold or a lowering. */
export function useLiveSounds(
  { plan }: LiveSet,
  { phase, stage, since }: LiveStanding,
  startsAt: number,
  lift: FloorLift | undefined,
  audio: AudioContext | null,
): void {
  useEffect(() => {
    const sounds = lift ? soundsOf(plan.stages[stage], phase, lift) : [];
    if (!audio || sounds.length === 0) return;
    return playSounds({ context: audio, sounds, startsAt: startsAt + since * 1000, now: wallNow });
  }, [audio, phase, stage, since]);
}

const LONGEST_REPS = 30;

function soundsOf(
  stage: LiveSet['plan']['stages'][number] | undefined,
  phase: LiveStanding['phase'],
  { tempo, startsWith }: FloorLift,
): readonly Sound[] {
  if (phase === 'holding' && stage?.kind === 'hold')
    return secondsSounds('pause', stage.maxSeconds);
  if (phase === 'lowering' && stage?.kind === 'lower') {
    return secondsSounds('lower', stage.secondsEach);
  }
  if (phase !== 'lifting') return [];
  const timeline = cueTimeline(tempo, { reps: LONGEST_REPS, startsWith });
  return countSounds(timeline, { repsBefore: 0, endsItself: false });
}
