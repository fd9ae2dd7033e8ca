import { type CapacityState, restCapacity } from '../capacity/index.ts';
import { pairRules } from '../pairing/index.ts';

/** What the muscles of a lift have lost when it begins. */
export interface LiftFatigue {
  /** By earlier sets of the same exercise. */
  readonly own: CapacityState;
  /** By other exercises, as far as it shows in this one (`pairRules.transfer`). */
  readonly carried: CapacityState;
}

/** Nothing lost. */
export const freshLift: LiftFatigue = { own: {}, carried: {} };

/** Fatigue by exercise, each as its own sets left it. */
export type SessionFatigue = ReadonlyMap<string, CapacityState>;

/** What a session so far means for one exercise. */
export function fatigueFor(exercise: string, session: SessionFatigue): LiftFatigue {
  const others = [...session]
    .filter(([id]) => id !== exercise)
    .map(([, state]) => carriedOver(state));
  return { own: session.get(exercise) ?? {}, carried: others.reduce(together, {}) };
}

/** The part of one exercise's fatigue that shows in another. */
export function carriedOver(state: CapacityState): CapacityState {
  const { likely } = pairRules.transfer;
  return Object.fromEntries(
    Object.entries(state).map(([muscle, { fast, slow }]) => [
      muscle,
      { fast: likely * fast, slow: likely * slow },
    ]),
  );
}

/** Two fatigues on the same muscles. */
export function together(a: CapacityState, b: CapacityState): CapacityState {
  const sum: Record<string, CapacityState[string]> = { ...a };
  for (const [muscle, { fast, slow }] of Object.entries(b)) {
    const before = a[muscle] ?? { fast: 0, slow: 0 };
    sum[muscle] = { fast: before.fast + fast, slow: before.slow + slow };
  }
  return sum;
}

/** A session's fatigue after some rest. */
export function restSession(session: SessionFatigue, seconds: number): SessionFatigue {
  return new Map([...session].map(([id, state]) => [id, restCapacity(state, seconds)]));
}
