import { bad, good, type Outcome } from '../../basis/index.ts';
import type { LoadRead, LoadsRead } from './readLoadCell.ts';
import type { RepsRead } from './readRepsCell.ts';

/** What one side did. */
export type OneSide = LoadRead & { readonly reps: number };

/** One set for each side that was written; what belongs to which side is never guessed. */
export function matchSides(
  [first, second]: LoadsRead,
  reps: RepsRead,
  side: 'left' | 'right' | undefined,
  received: string,
): Outcome<readonly OneSide[]> {
  if (second === undefined && reps.kind === 'one') {
    return good([{ ...first, ...(side === undefined ? {} : { side }), reps: reps.reps }]);
  }
  if (second === undefined || reps.kind === 'one') {
    return bad({
      code: 'progress.sides-unclear',
      path: ['reps'],
      message:
        'Say which side had how many: L 30 / R 30 as the load with 8/10 as repetitions, or a row for each side.',
      received,
    });
  }
  return good([
    { ...first, reps: reps.first },
    { ...second, reps: reps.second },
  ]);
}
