import { isDeepStrictEqual } from 'node:util';
import { readBackup, type SavedLists, writeBackup } from '@windlass/core/schema';
import { examples } from '../../../site/src/planner/state/examples.ts';
import { damaged } from '../inputs/texts.ts';
import { damagedJson } from '../inputs/trees.ts';
import type { Target } from '../Target.ts';

const plan = examples['pull-day'];
const saved = { revision: 'r2', past: ['r1'], changedAt: '2027-03-15T18:30:00Z' };
const lists: SavedLists = {
  clients: [{ ...saved, id: 'a1', gymId: 'b1', client: plan.client }],
  gyms: [{ ...saved, id: 'b1', gym: plan.gym }],
  sessions: [{ ...saved, id: 'c1', clientId: 'a1', date: '2027-03-15', plan, sets: [] }],
  running: [{ id: 'd1', startedAt: '2027-03-15T18:30:00Z', plan, events: [{ kind: 'begun' }] }],
};
const file: unknown = JSON.parse(writeBackup(lists, '2027-03-16T07:00:00Z'));

/** Backups, which may come back from any disk or mail. */
export const backupTargets: readonly Target[] = [
  {
    name: 'backup file',
    weight: 15,
    mostMs: 1000,
    make: (random) => {
      const text = damagedJson(file, random);
      return random.oneIn(3) ? damaged(text, random) : text;
    },
    run: (text: string) => {
      const read = readBackup(text);
      if (!read.ok) return read;
      const again = readBackup(writeBackup(read.value.lists, '2027-03-16T07:00:00Z'));
      if (!again.ok || !isDeepStrictEqual(again.value.lists, read.value.lists)) {
        throw new Error('records change when they are written and read');
      }
      return read;
    },
  },
];
