import type { DoneSet } from '../run/FloorState.ts';
import type { FloorLift, FloorStep } from '../session/FloorSession.ts';

/**
 * How a set went against what was expected of it: its repetitions and those that were left, less
 * those that were to be left, beside the band of the plan.
 *
 * @returns nothing where nothing was expected, or nobody knows how the set ended.
 */
export function standingOf(
  { reps, end }: Pick<DoneSet, 'reps' | 'end'>,
  { expected }: Pick<FloorStep, 'expected'>,
  { repsInReserve }: Pick<FloorLift, 'repsInReserve'>,
): 'below' | 'as-expected' | 'above' | null {
  if (!expected || !end) return null;
  const left = end.kind === 'failure' ? 0 : end.kind === 'reserve' ? end.repsLeft : end.atLeast;
  const done = reps + left - repsInReserve;
  if (done > expected.high) return 'above';
  if (done >= expected.low) return 'as-expected';
  return end.kind === 'more' ? null : 'below';
}
