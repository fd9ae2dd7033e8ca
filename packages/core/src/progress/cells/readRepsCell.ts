import { bad, good, type Outcome } from '../../basis/index.ts';

/** Repetitions of a set, or of each side in the order they were written. */
export type RepsRead =
  | { readonly kind: 'one'; readonly reps: number }
  | { readonly kind: 'two'; readonly first: number; readonly second: number };

/** Repetitions from a cell: `8`, `8.0`, or `8/10` where the sides were counted apart. */
export function readRepsCell(cell: string): Outcome<RepsRead> {
  const [, first = '', second] = /^(\d{1,3})(?:[.,]0+)?(?:\s*[/|]\s*(\d{1,3}))?$/.exec(cell) ?? [];
  const counts = [first, second ?? first].map(Number) as [number, number];
  if (first === '' || Math.max(...counts) > 200) {
    return bad({
      code: 'progress.not-reps',
      path: ['reps'],
      message: 'Write whole repetitions from 0 to 200, for example 8, or 8/10 for two sides.',
      received: cell,
    });
  }
  return good(
    second === undefined
      ? { kind: 'one', reps: counts[0] }
      : { kind: 'two', first: counts[0], second: counts[1] },
  );
}
