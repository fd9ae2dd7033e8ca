import { cueTimeline } from '@windlass/core/tempo';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { countSounds } from './countSounds.ts';
import { playSounds } from './playSounds.ts';
import type { Sound } from './Sound.ts';

/** Tempo 4-0-2-0 for ten minutes: a hundred repetitions of 6 s, a sound every second. */
const tempo = {
  lowerSeconds: 4,
  pauseAfterLowerSeconds: 0,
  liftSeconds: 2,
  pauseAfterLiftSeconds: 0,
} as const;
const timeline = cueTimeline(tempo, { reps: 100, startsWith: 'lift', leadInSeconds: 5 });
const sounds = countSounds(timeline, { repsBefore: 0, endsItself: true });

interface Machine {
  /** Seconds of the audio clock in a second on the wall. */
  readonly rate: number;
  /** Seconds that the audio clock stands still, as it moves on block by block. */
  readonly blockSeconds: number;
  /** Seconds between two calls of a timer. */
  readonly timerSeconds: number;
  /** Seconds on the wall in which the sound is interrupted. */
  readonly interrupted?: readonly [from: number, to: number];
}

/** Plays on a machine whose clocks are known, and gives when each sound was heard on the wall. */
function heardOn(
  { rate, blockSeconds, timerSeconds, interrupted }: Machine,
  played: readonly Sound[],
) {
  let wall = 0;
  let wake = () => {};
  let refill = () => {};
  vi.stubGlobal('setInterval', (run: () => void) => {
    refill = run;
    return 1;
  });
  const pause = ([from, to] = interrupted ?? [0, 0]) => Math.max(0, Math.min(wall, to) - from);
  const exact = () => 2 + (wall - pause()) * rate;
  const onWall = (audio: number) => {
    const running = (audio - 2) / rate;
    const [from, to] = interrupted ?? [0, 0];
    return running > from ? running + (to - from) : running;
  };
  const sources: { when: number; stopped: boolean }[] = [];
  const context = {
    get state() {
      const [from, to] = interrupted ?? [0, 0];
      return wall >= from && wall < to ? 'suspended' : 'running';
    },
    get currentTime() {
      return Math.floor(exact() / blockSeconds) * blockSeconds;
    },
    sampleRate: 8000,
    destination: {},
    createBuffer: () => ({ copyToChannel: () => {} }),
    createBufferSource: () => {
      const source = { when: 0, stopped: false };
      sources.push(source);
      return {
        connect: () => {},
        start: (when: number) => {
          expect(when).toBeGreaterThanOrEqual(context.currentTime);
          source.when = when;
        },
        stop: () => {
          if (exact() < source.when) source.stopped = true;
        },
      };
    },
    addEventListener: (_: string, run: () => void) => {
      wake = run;
    },
    removeEventListener: () => {},
  };
  const stop = playSounds({
    context: context as unknown as AudioContext,
    sounds: played,
    startsAt: 5000,
    now: () => wall * 1000,
  });
  for (wall = 0; wall < 620; wall = Math.round((wall + 0.1) * 10) / 10) {
    if (interrupted && wall === interrupted[1]) wake();
    if (Math.round(wall * 10) % Math.round(timerSeconds * 10) === 0) refill();
  }
  stop();
  return sources.filter(({ stopped }) => !stopped).map(({ when }) => onWall(when));
}

afterEach(() => void vi.unstubAllGlobals());

const ideal = sounds.map(({ atSeconds }) => 5 + atSeconds);
const worst = (heard: readonly number[]) =>
  Math.max(...heard.map((at, place) => Math.abs(at - (ideal[place] ?? 0))));

describe('sounds of ten minutes', () => {
  it('are each heard within 20 ms, with timers that come once a minute', () => {
    // Audio clocks are off by up to 100 millionths: 60 ms in ten minutes if nobody looks.
    for (const rate of [1, 1.0001, 0.9999]) {
      const heard = heardOn({ rate, blockSeconds: 0.01, timerSeconds: 60 }, sounds);
      expect(heard).toHaveLength(sounds.length);
      expect(worst(heard)).toBeLessThan(0.02);
    }
  });

  it('are handed over before their minute, so that no timer has to be in time', () => {
    const heard = heardOn({ rate: 1, blockSeconds: 0.003, timerSeconds: 1 }, sounds);
    expect(heard).toHaveLength(sounds.length);
    expect(worst(heard)).toBeLessThan(0.005);
  });

  it('go on in time after the sound was interrupted, without those that were missed', () => {
    const machine = {
      rate: 1,
      blockSeconds: 0.01,
      timerSeconds: 1,
      interrupted: [50, 80],
    } as const;
    const heard = heardOn(machine, sounds);
    const missed = ideal.filter((at) => at > 50 && at < 79.97);
    expect(heard).toHaveLength(sounds.length - missed.length);
    const off = heard.map((at) => Math.min(...ideal.map((right) => Math.abs(right - at))));
    expect(Math.max(...off)).toBeLessThan(0.02);
  });
});
