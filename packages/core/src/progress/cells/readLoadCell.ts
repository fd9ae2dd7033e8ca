import { bad, good, type Outcome } from '../../basis/index.ts';
import type { Counts } from '../../equipment/index.ts';
import { type LoadValue, type ParseLoadOptions, parseLoad } from '../../load/index.ts';

/** A load as a log holds it, for one side where the sides were written apart. */
export interface LoadRead {
  readonly load: LoadValue;
  readonly counts: Counts;
  readonly hands?: 1 | 2;
  readonly side?: 'left' | 'right';
}

/** How {@link readLoadCell} reads what a cell does not say. */
export interface LoadReading extends ParseLoadOptions {
  /** What a load without a sign, a pair or a word counts. */
  readonly counts: Counts;
}

const BODY = /^(?:body\s?weight|bw|körpergewicht|pdc|kg(?=\s*[+\-−–]))\s*/iu;

/**
 * A load from a cell, as people write it: `102,5`, `135lb`; `2x22,5` is one in each hand; `+10`,
 * `BW+10`, `KG+10` and `-20 kg` go on top of the body or off it, `BW` is the body alone;
 * `L 30 / R 30` holds one for each side. Anything else is a problem, not a guess.
 */
export function readLoadCell(cell: string, reading: LoadReading): Outcome<readonly LoadRead[]> {
  const sides = /^\s*(l|left|r|right)\b[\s:]*(.+?)\s*[/|]\s*(l|left|r|right)\b[\s:]*(.+)$/iu.exec(
    cell,
  );
  if (sides) {
    const [, firstName = '', firstLoad = '', secondName = '', secondLoad = ''] = sides;
    return bothSides(
      [
        { side: sideOf(firstName), load: firstLoad },
        { side: sideOf(secondName), load: secondLoad },
      ],
      reading,
    );
  }
  const pair = /^([12])\s*[x×*]\s*(.+)$/iu.exec(cell);
  if (pair) {
    const hands = pair[1] === '1' ? 1 : 2;
    return single(pair[2] ?? '', reading, { counts: 'each-hand', hands });
  }
  const added = cell.replace(BODY, '');
  if (added !== cell && added === '') {
    return good([{ load: { value: 0, unit: reading.unit }, counts: 'added' }]);
  }
  if (/^[+\-−–]/u.test(added)) return single(added, reading, { counts: 'added' });
  return single(cell, reading, { counts: reading.counts });
}

interface SideText {
  readonly side: 'left' | 'right';
  readonly load: string;
}

function bothSides(
  [first, second]: readonly [SideText, SideText],
  reading: LoadReading,
): Outcome<readonly LoadRead[]> {
  if (first.side === second.side) {
    return bad({
      code: 'progress.same-side-twice',
      path: ['load'],
      message: 'Write one load for the left and one for the right: L 30 / R 30.',
    });
  }
  const [one, other] = [first, second].map(({ side, load }) =>
    single(load, reading, { counts: 'each-hand', hands: 1, side }),
  ) as [Outcome<readonly LoadRead[]>, Outcome<readonly LoadRead[]>];
  if (!one.ok) return one;
  return other.ok ? good([...one.value, ...other.value]) : other;
}

function sideOf(name: string): 'left' | 'right' {
  return name.toLowerCase().startsWith('l') ? 'left' : 'right';
}

function single(
  text: string,
  reading: LoadReading,
  kind: Omit<LoadRead, 'load'>,
): Outcome<readonly LoadRead[]> {
  const parsed = parseLoad(text, reading);
  if (!parsed.ok) {
    return bad(...parsed.problems.map((problem) => ({ ...problem, path: ['load'] })));
  }
  if (parsed.value.value < 0 && kind.counts !== 'added') {
    return bad({
      code: 'progress.negative-load',
      path: ['load'],
      message: 'A load below 0 is help: write it as -20, without a number of pieces or a side.',
      received: text,
    });
  }
  return good([{ load: parsed.value, ...kind }]);
}
