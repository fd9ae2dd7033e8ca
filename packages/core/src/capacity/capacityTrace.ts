import { requireNumber } from '../basis/index.ts';
import type {
  CapacityLine,
  CapacityPoint,
  CapacityTrace,
  CapacityTraceInput,
  LineCrossing,
} from './CapacityStep.ts';
import { capacityFor } from './capacityFor.ts';
import { freshCapacity } from './freshCapacity.ts';
import { stepCapacity, stepSeconds } from './stepCapacity.ts';

/**
 * An exercise's capacity over the seconds of reps, holds and rests, and when it passed the lines
 * that a load asks for. Steps may be of other exercises: a pair, a warm-up and its work set and
 * several sets with rests are all steps on one time line.
 *
 * Reps and rests and holds follow their closed forms; points lie at most 2 s apart where the
 * curve bends, and crossings are found on the curve itself, to a millisecond.
 *
 * @returns one point at second 0 when there are no steps.
 * @throws RangeError for an argument out of range.
 * @example
 * ```ts
 * import { capacityTrace } from '@windlass/core/capacity';
 * const lats = { lats: 1 };
 * const trace = capacityTrace({
 *   shares: lats,
 *   steps: [{ kind: 'reps', shares: lats, reps: 10, secondsPerRep: 4, costPerRep: 0.03 }],
 *   lines: [{ id: 'lift', capacity: 0.79 }],
 * });
 * trace.points.at(-1); // { seconds: 40, capacity: 0.7 }
 * trace.crossings[0]?.seconds.toFixed(2); // '28.00'
 * ```
 */
export function capacityTrace({
  shares,
  steps,
  lines = [],
  start = freshCapacity(),
}: CapacityTraceInput): CapacityTrace {
  for (const line of lines) requireNumber('capacityTrace', `line ${line.id}`, line.capacity);
  let state = start;
  let begun = 0;
  const points: CapacityPoint[] = [{ seconds: 0, capacity: capacityFor(state, shares) }];
  const stepStarts = [0];
  const crossings: LineCrossing[] = [];
  for (const step of steps) {
    const from = state;
    const seconds = stepSeconds(step);
    const capacityAt = (elapsed: number) => capacityFor(stepCapacity(from, step, elapsed), shares);
    const parts = step.kind === 'reps' ? 1 : Math.ceil(seconds / 2);
    for (let part = 1; part <= parts; part++) {
      const elapsed = (seconds * part) / parts;
      points.push({ seconds: begun + elapsed, capacity: capacityAt(elapsed) });
    }
    crossings.push(...crossingsIn(lines, capacityAt, begun, seconds));
    state = stepCapacity(from, step, seconds);
    begun += seconds;
    stepStarts.push(begun);
  }
  return { points, stepStarts, crossings, end: state };
}

/** Where a step's capacity, which only falls or only rises, passes each line; in order of time. */
function crossingsIn(
  lines: readonly CapacityLine[],
  capacityAt: (elapsed: number) => number,
  begun: number,
  seconds: number,
): readonly LineCrossing[] {
  return lines
    .flatMap(({ id, capacity }): readonly LineCrossing[] => {
      const wasBelow = capacityAt(0) < capacity;
      if (wasBelow === capacityAt(seconds) < capacity) return [];
      let before = 0;
      let after = seconds;
      while (after - before > 1e-4) {
        const middle = (before + after) / 2;
        if (capacityAt(middle) < capacity === wasBelow) before = middle;
        else after = middle;
      }
      return [{ line: id, seconds: begun + after, direction: wasBelow ? 'up' : 'down' }];
    })
    .sort((a, b) => a.seconds - b.seconds);
}
