import { restCapacity } from '../capacity/index.ts';
import type { SessionFatigue } from './LiftFatigue.ts';

/** A session's fatigue after some rest. */
export function restSession(session: SessionFatigue, seconds: number): SessionFatigue {
  return new Map([...session].map(([id, state]) => [id, restCapacity(state, seconds)]));
}
