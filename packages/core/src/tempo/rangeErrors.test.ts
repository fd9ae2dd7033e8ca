import { expect, it } from 'vitest';
import { rangeErrorOf } from '../basis/rangeErrorOf.testing.ts';
import { comparePace } from './comparePace.ts';
import { compareTempo } from './compareTempo.ts';
import { cueTimeline } from './cueTimeline.ts';
import { phasesOfRep } from './phasesOfRep.ts';
import { repsInWindow } from './repsInWindow.ts';
import { secondsPerRep } from './secondsPerRep.ts';
import { secondsPerSet } from './secondsPerSet.ts';
import { secondsUnderLoad } from './secondsUnderLoad.ts';

const tempo = {
  lowerSeconds: 3,
  pauseAfterLowerSeconds: 0,
  liftSeconds: 1,
  pauseAfterLiftSeconds: 0,
};
const counted = { lastPause: 'counted' } as const;
const long = { ...counted, fastLiftSeconds: 2 };
const window = { minSeconds: 30, maxSeconds: 60 };

it.each([
  ['comparePace: reps', () => comparePace(tempo, -1, 20, counted)],
  ['comparePace: doneSeconds', () => comparePace(tempo, 5, -1, counted)],
  [
    'compareTempo: toleranceSeconds',
    () => compareTempo(tempo, [], { ...counted, toleranceSeconds: 11 }),
  ],
  [
    'compareTempo: lowerSeconds of rep 2',
    () => compareTempo(tempo, [tempo, { ...tempo, lowerSeconds: -1 }], counted),
  ],
  ['cueTimeline: reps', () => cueTimeline(tempo, { reps: 1001 })],
  ['cueTimeline: leadInSeconds', () => cueTimeline(tempo, { reps: 1, leadInSeconds: 61 })],
  ['cueTimeline: fastLiftSeconds', () => cueTimeline(tempo, { reps: 1, fastLiftSeconds: 2 })],
  ['phasesOfRep: fastLiftSeconds', () => phasesOfRep(tempo, long)],
  [
    'repsInWindow: maxSeconds',
    () => repsInWindow(tempo, { minSeconds: 0, maxSeconds: 3601 }, counted),
  ],
  [
    'repsInWindow: minSeconds',
    () => repsInWindow(tempo, { minSeconds: 61, maxSeconds: 60 }, counted),
  ],
  ['repsInWindow: fastLiftSeconds', () => repsInWindow(tempo, window, long)],
  ['secondsPerRep: fastLiftSeconds', () => secondsPerRep(tempo, long)],
  ['secondsPerSet: reps', () => secondsPerSet(tempo, 0.5, counted)],
  ['secondsPerSet: fastLiftSeconds', () => secondsPerSet(tempo, 1, long)],
  ['secondsUnderLoad: reps', () => secondsUnderLoad(tempo, -1, counted)],
  ['secondsUnderLoad: fastLiftSeconds', () => secondsUnderLoad(tempo, 1, long)],
])('a mistake in code is named: %s', (named, call) => {
  expect(rangeErrorOf(call)).toBe(named);
});

it('a tempo that is none is refused with every sentence of its own check', () => {
  const wrong = { ...tempo, lowerSeconds: -1, pauseAfterLiftSeconds: 61 };
  expect(() => secondsPerRep(wrong)).toThrow(
    'secondsPerRep: Give the lowering in seconds, 0 or more. Keep the pause after lifting to 60 seconds or less.',
  );
});
