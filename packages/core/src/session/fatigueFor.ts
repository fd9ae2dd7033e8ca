import { carriedOver } from './carriedOver.ts';
import type { LiftFatigue, SessionFatigue } from './LiftFatigue.ts';
import { together } from './together.ts';

/** What a session so far means for one exercise. */
export function fatigueFor(exercise: string, session: SessionFatigue): LiftFatigue {
  const others = [...session]
    .filter(([id]) => id !== exercise)
    .map(([, state]) => carriedOver(state));
  return { own: session.get(exercise) ?? {}, carried: others.reduce(together, {}) };
}
