import { bad, good, type Outcome } from '../../basis/index.ts';

/** A side from a cell: left or right, or its first letter. */
export function readSide(cell: string): Outcome<'left' | 'right'> {
  const word = cell.toLowerCase();
  if (word === 'l' || word === 'left') return good('left');
  if (word === 'r' || word === 'right') return good('right');
  return bad({
    code: 'progress.unknown-side',
    path: ['side'],
    message: 'Write left or right.',
    received: cell,
  });
}
