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

/** One load, or one for each side. */
export type LoadsRead = readonly [LoadRead] | readonly [LoadRead, LoadRead];

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
export function readLoadCell(cell: string, reading: LoadReading): Outcome<LoadsRead> {
  const sides = /^(l|left|r|right)\b[\s:]*(.+?)\s*[/|]\s*(l|left|r|right)\b[\s:]*(.+)$/iu.exec(
    cell,
  );
  if (sides) {
    const [firstName, firstLoad, secondName, secondLoad] = sides.slice(1) as [
      string,
      string,
      string,
      string,
    ];
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
    const [count, load] = pair.slice(1) as [string, string];
    const hands = count === '1' ? 1 : 2;
    return one(load, reading, { counts: 'each-hand', hands });
  }
  const added = cell.replace(BODY, '');
  if (added !== cell && added === '') {
    return good([{ load: { value: 0, unit: reading.unit }, counts: 'added' }]);
  }
  if (/^[+\-−–]/u.test(added)) return one(added, reading, { counts: 'added' });
  return one(cell, reading, { counts: reading.counts });
}

interface SideText {
  readonly side: 'left' | 'right';
  readonly load: string;
}

function bothSides(
  [first, second]: readonly [SideText, SideText],
  reading: LoadReading,
): Outcome<LoadsRead> {
  if (first.side === second.side) {
    return bad({
      code: 'progress.same-side-twice',
      path: ['load'],
      message: 'Write one load for the left and one for the right: L 30 / R 30.',
    });
  }
  const read = ({ side, load }: SideText) =>
    single(load, reading, { counts: 'each-hand', hands: 1, side });
  const [a, b] = [read(first), read(second)];
  if (!a.ok) return a;
  return b.ok ? good([a.value, b.value]) : b;
}

function sideOf(name: string): 'left' | 'right' {
  return name.toLowerCase().startsWith('l') ? 'left' : 'right';
}

function one(text: string, reading: LoadReading, kind: Omit<LoadRead, 'load'>): Outcome<LoadsRead> {
  const read = single(text, reading, kind);
  return read.ok ? good([read.value]) : read;
}

function single(
  text: string,
  reading: LoadReading,
  kind: Omit<LoadRead, 'load'>,
): Outcome<LoadRead> {
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
  return good({ load: parsed.value, ...kind });
}
