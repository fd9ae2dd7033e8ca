import { isDeepStrictEqual } from 'node:util';
import {
  importLog,
  type LoggedSet,
  previewImport,
  readLogCsv,
  readLogJson,
  writeLogCsv,
  writeLogJson,
} from '@windlass/core/progress';
import { tableText } from '../inputs/tables.ts';
import { anyText, damaged } from '../inputs/texts.ts';
import { damagedJson } from '../inputs/trees.ts';
import type { Target } from '../Target.ts';

const set: LoggedSet = {
  date: '2027-03-11',
  exercise: 'cable-pulldown',
  set: 1,
  load: { value: 53.75, unit: 'kg' },
  counts: 'total',
  bodyWeight: { value: 78, unit: 'kg' },
  reps: 10,
  end: { kind: 'reserve', repsLeft: 1 },
  tempo: '4-0-2-0',
  restSeconds: 150,
  tags: ['travel'],
  equipment: 'pulldown',
  note: 'Seat at 4; "two notches"',
};
const log = JSON.parse(writeLogJson([set, { ...set, set: 2, side: 'left' }])) as unknown;

/** Readers of whole logs: tables of anybody's making, and files of our own. */
export const logTargets: readonly Target[] = [
  {
    name: 'table of a log',
    weight: 150,
    mostMs: 500,
    make: (random) => (random.oneIn(5) ? anyText(random) : tableText(random)),
    run: (text: string) => {
      const preview = previewImport(text);
      const { date = 0, exercise = 1, load = 2, reps = 3 } = preview.suggestion;
      const columns = { date, exercise, load, reps };
      const exercises = { Row: 'cable-row' };
      const imported = importLog(text, { columns, unit: 'kg', dateOrder: 'day-first', exercises });
      return [preview, imported, written(imported.sets)];
    },
  },
  {
    name: 'log file, CSV',
    weight: 150,
    mostMs: 500,
    make: (random) =>
      random.oneIn(2) ? tableText(random) : damaged(writeLogCsv([set, set]), random),
    run: (text: string) => {
      const read = readLogCsv(text);
      return [read, written(read.sets)];
    },
  },
  {
    name: 'log file, JSON',
    weight: 100,
    mostMs: 500,
    make: (random) => {
      const text = damagedJson(log, random);
      return random.oneIn(3) ? damaged(text, random) : text;
    },
    run: (text: string) => {
      const read = readLogJson(text);
      return [read, written(read.sets)];
    },
  },
];

/** Sets that were read are written and read again without a change. */
function written(sets: readonly LoggedSet[]): string {
  const csv = writeLogCsv(sets);
  for (const again of [readLogCsv(csv), readLogJson(writeLogJson(sets))]) {
    if (!isDeepStrictEqual(again.sets, sets)) {
      throw new Error(`sets change when they are written and read: ${JSON.stringify(again)}`);
    }
  }
  return csv;
}
