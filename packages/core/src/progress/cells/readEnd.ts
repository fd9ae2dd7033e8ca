import { bad, good, type Outcome } from '../../basis/index.ts';
import type { SetEnd } from '../../strength/index.ts';
import { readNumberCell } from './readNumberCell.ts';

/** The cells that can say how a set ended. */
export interface EndCells {
  /** `failure`, `reserve` or `more`; the last two go with a number under `reserve`. */
  readonly ended?: string;
  /** Repetitions left. */
  readonly reserve?: string;
  /** Effort of 10, where 10 is failure and each point below it one repetition left. */
  readonly effort?: string;
}

/** How a set ended, by whichever of the cells is filled; nothing when none is. */
export function readEnd({
  ended = '',
  reserve = '',
  effort = '',
}: EndCells): Outcome<SetEnd | undefined> {
  if (ended === 'failure') return good({ kind: 'failure' });
  if (reserve !== '') {
    const left = readNumberCell(reserve, 'reserve', 0, 50);
    if (!left.ok) return left;
    return good(
      ended === 'more'
        ? { kind: 'more', atLeast: left.value }
        : { kind: 'reserve', repsLeft: left.value },
    );
  }
  if (effort !== '') {
    const points = readNumberCell(effort, 'effort', 0, 10);
    if (!points.ok) return points;
    return good(
      points.value >= 5
        ? { kind: 'reserve', repsLeft: 10 - points.value }
        : { kind: 'more', atLeast: 5 },
    );
  }
  if (ended === '') return good(undefined);
  return bad({
    code: 'progress.unknown-end',
    path: ['ended'],
    message: 'Write failure, or reserve or more with the repetitions left in their own column.',
    received: ended,
  });
}
