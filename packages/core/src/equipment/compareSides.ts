import { type Load, loadFromValue } from '../load/index.ts';
import type { Loading, StackPlace } from './Loading.ts';

/** The two ends of a bar compared, plates only. */
export interface Sides {
  readonly left: Load;
  readonly right: Load;
  /** Heavier end less lighter end; 0 when even. */
  readonly difference: Load;
  readonly heavier: 'left' | 'right' | 'neither';
}

/** Left and right end of a loading; `undefined` where there are no two ends. */
export function compareSides(loading: Loading): Sides | undefined {
  const [left, right] = [weightAt(loading, 'left'), weightAt(loading, 'right')];
  if (left === undefined || right === undefined) return undefined;
  const heavier = left > right ? 'left' : left < right ? 'right' : 'neither';
  return { left, right, difference: Math.abs(left - right) as Load, heavier };
}

function weightAt(loading: Loading, place: StackPlace): Load | undefined {
  if (loading.kind !== 'plates') return undefined;
  const stack = loading.stacks.find((candidate) => candidate.place === place);
  return stack?.plates.reduce((sum, { weight }) => sum + loadFromValue(weight), 0) as
    | Load
    | undefined;
}
