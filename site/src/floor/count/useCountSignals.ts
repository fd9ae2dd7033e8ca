import { language } from '@windlass/calculators/ui';
import { cueTimeline } from '@windlass/core/tempo';
import { useEffect, useRef } from 'preact/hooks';
import type { FloorState } from '../run/FloorState.ts';
import { countedTo } from '../session/countedTo.ts';
import type { FloorSession } from '../session/FloorSession.ts';
import { type CountSettings, leadIns } from '../view/useCountSettings.ts';
import { countSounds, restSounds } from './countSounds.ts';
import { followCues } from './followCues.ts';
import { playSounds } from './playSounds.ts';
import { wallNow } from './wallClock.ts';

const LONGEST_LEAD_IN = Math.max(...leadIns);

const vibrations = {
  'lead-in': 30,
  lift: 60,
  lower: 160,
  'pause-after-lift': 30,
  'pause-after-lower': 30,
} as const;

const REST_OVER_VIBRATION = [200, 120, 200];

/** Lets a count and a rest be heard and felt, as the settings say. */
export function useCountSignals(
  session: FloorSession,
  state: FloorState,
  settings: CountSettings,
  audio: AudioContext | null,
): void {
  const { running, rest } = state;
  const count = running?.count;
  const step = session.steps[state.step];
  const lift = step && session.lifts[step.lift];
  const byHand = running && count ? running.reps - count.repsBefore - count.told : 0;
  const shift = useRef(0);
  shift.current = (count?.repsBefore ?? 0) + byHand;

  const timeline = () => {
    if (!count || !step || !lift) return null;
    const reps = countedTo(step, lift) - count.repsBefore;
    const { tempo, startsWith } = lift;
    return cueTimeline(tempo, { reps, startsWith, leadInSeconds: LONGEST_LEAD_IN });
  };

  useEffect(() => {
    const cues = timeline();
    if (!cues || !count || !lift || !step || !audio || !settings.sound) return;
    const isWork = step.kind === 'work';
    const sounds = countSounds(cues, {
      repsBefore: shift.current,
      ...(isWork && { windowFrom: lift.window.minReps }),
      endsItself: true,
    });
    return playSounds({ context: audio, sounds, startsAt: count.startsAt, now: wallNow });
  }, [audio, settings.sound, count?.startsAt, state.step, shift.current]);

  useEffect(() => {
    const cues = timeline();
    if (!cues || !count || !(settings.voice || settings.vibration)) return;
    return followCues(cues.cues, count.startsAt, (cue) => {
      const isFirst = cue.count === 1 || cue.phase === 'lead-in';
      if (settings.vibration && isFirst) navigator.vibrate?.(vibrations[cue.phase]);
      if (!settings.voice || cue.phase === 'lead-in') return;
      const isNewRep = cues.cues.find(({ rep }) => rep === cue.rep) === cue;
      if (isNewRep) speak(shift.current + cue.rep);
    });
  }, [settings.voice, settings.vibration, count?.startsAt, state.step]);

  useEffect(() => {
    if (!rest) return;
    const ends = rest.startedAt + rest.seconds * 1000 - wallNow();
    const timer =
      ends > 0 && settings.vibration
        ? setTimeout(() => navigator.vibrate?.(REST_OVER_VIBRATION), ends)
        : undefined;
    const stop =
      audio && settings.sound
        ? playSounds({
            context: audio,
            sounds: restSounds(rest.seconds),
            startsAt: rest.startedAt,
            now: wallNow,
          })
        : undefined;
    return () => {
      clearTimeout(timer);
      stop?.();
    };
  }, [audio, settings.sound, settings.vibration, rest?.startedAt, rest?.seconds]);
}

function speak(number: number): void {
  if (!('speechSynthesis' in globalThis)) return;
  speechSynthesis.cancel();
  const words = new SpeechSynthesisUtterance(String(number));
  words.lang = language;
  words.rate = 1.3;
  speechSynthesis.speak(words);
}
