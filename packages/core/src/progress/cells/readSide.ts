import { bad, good, type Outcome } from '../../basis/index.ts';

/** A side from a cell: left or right, or its first letter. */
export function readSide(cell: string): Outcome<'left' | 'right'> {
  const side = { l: 'left', left: 'left', r: 'right', right: 'right' }[cell.toLowerCase()];
  return side === undefined
    ? bad({
        code: 'progress.unknown-side',
        path: ['side'],
        message: 'Write left or right.',
        received: cell,
      })
    : good(side as 'left' | 'right');
}
