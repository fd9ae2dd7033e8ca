import { type Exercise, jointsLoaded } from '../anatomy/index.ts';
import type { Limits } from '../safety/index.ts';
import type { ExchangeReason } from './Exchange.ts';
import { positionWords } from './positionWords.ts';

/** What the person's limits rule out beside the clinician's list. */
export function fromLimits(exercise: Exercise, limits: Limits): readonly ExchangeReason[] {
  const positions = limits.positions
    .filter(({ position, level }) => level === 'avoid' && exercise.positions.includes(position))
    .map(({ position, reason }) => ({
      code: 'position-to-avoid',
      words: `It has ${positionWords(position)}. ${reason.words}`,
    }));
  const joints = jointsLoaded(exercise);
  const paused = limits.joints
    .filter(({ joint }) => joints.includes(joint))
    .map(({ joint, reason }) => ({
      code: 'joint-paused',
      words: `It loads the ${joint}. ${reason.words}`,
    }));
  const supports = limits.supports
    .filter(({ support }) => support === exercise.support)
    .map(({ support, reason }) => ({
      code: 'support-not-used',
      words: `It is done ${support.replaceAll('-', ' ')}. ${reason.words}`,
    }));
  const out = new Set(limits.handsOutOfUse).size;
  const hands =
    exercise.hands > 2 - out
      ? [
          {
            code: 'hand-out-of-use',
            words: `It needs ${exercise.hands === 1 ? 'a hand' : 'both hands'}.`,
          },
        ]
      : [];
  return [...positions, ...paused, ...supports, ...hands];
}
