import type { Band } from '../../packages/core/src/basis/index.ts';
import { kappaAtTempo } from '../../packages/core/src/strength/index.ts';

/** Repetitions when a set of `reps` at `from` seconds a repetition is done at `to` seconds. */
export function repsAtPace(reps: number, from: number, to: number): Band {
  const { low, likely, high, level } = kappaAtTempo(1, to).kappa;
  const base = kappaAtTempo(1, from).kappa.likely;
  const at = (kappa: number) => 1 + (reps - 1) * (kappa / base);
  return { low: at(low), likely: at(likely), high: at(high), level };
}
