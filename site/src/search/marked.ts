import { termsOf } from './termsOf.ts';

/** A piece of a text, and whether it is what the query meant. */
export interface Piece {
  readonly text: string;
  readonly isHit: boolean;
}

/** Longest text shown below a hit, in characters. */
const LONGEST = 170;
/** How much of it stands before the first word that was meant. */
const BEFORE = 50;

/** A text in pieces, its matched words apart. `matched` are terms of the index. */
export function marked(text: string, matched: readonly string[]): readonly Piece[] {
  const meant = new Set(matched);
  return text
    .split(/([\p{L}\p{N}]+)/u)
    .filter((part) => part !== '')
    .map((part) => ({
      text: part,
      isHit: termsOf(part).some((term) => meant.has(term.toLowerCase())),
    }));
}

/** The part of a text around the first matched word, cut at words. */
export function excerpt(text: string, matched: readonly string[]): readonly Piece[] {
  const pieces = marked(text, matched);
  if (text.length <= LONGEST) return pieces;
  const firstHit = pieces.findIndex(({ isHit }) => isHit);
  let start = Math.max(0, firstHit);
  for (let length = 0; start > 0 && length < BEFORE; start -= 1)
    length += pieces[start - 1]?.text.length ?? 0;
  const shown: Piece[] = [];
  let length = 0;
  for (const piece of pieces.slice(start)) {
    length += piece.text.length;
    if (length > LONGEST) return [...lead(start), ...shown, { text: '…', isHit: false }];
    shown.push(piece);
  }
  return [...lead(start), ...shown];
}

function lead(start: number): readonly Piece[] {
  return start > 0 ? [{ text: '… ', isHit: false }] : [];
}
