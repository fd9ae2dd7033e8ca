import { type Load, loadFromValue } from '../load/index.ts';
import type { Plate } from './Equipment.ts';

/** One plate moved at one end, and the tilt after it: left end less right end. */
export interface Turn {
  readonly end: 0 | 1;
  readonly plate: Plate;
  readonly tilt: Load;
}

/**
 * The order in which the two ends of a bar take turns: the next plate is the one that leaves the
 * smaller difference, at the first end where that is the same.
 *
 * @param ends plates of each end in the order in which that end must move them.
 * @param direction 1 puts them on, -1 takes them off.
 */
export function takeTurns(
  ends: readonly [readonly Plate[], readonly Plate[]],
  direction: 1 | -1,
  startTilt: number,
): readonly Turn[] {
  const turns: Turn[] = [];
  let tilt = startTilt;
  let [left, right] = [0, 0];
  for (;;) {
    const first = turn(0, ends[0][left], tilt, direction);
    const second = turn(1, ends[1][right], tilt, -direction);
    const next = first && second ? smaller(first, second) : (first ?? second);
    if (next === undefined) return turns;
    turns.push(next);
    tilt = next.tilt;
    if (next.end === 0) left += 1;
    else right += 1;
  }
}

function turn(end: 0 | 1, plate: Plate | undefined, tilt: number, sign: number): Turn | undefined {
  if (plate === undefined) return undefined;
  return { end, plate, tilt: (tilt + sign * loadFromValue(plate.weight)) as Load };
}

function smaller(first: Turn, second: Turn): Turn {
  return Math.abs(first.tilt) <= Math.abs(second.tilt) ? first : second;
}
