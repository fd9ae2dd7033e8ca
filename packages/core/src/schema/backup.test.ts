import { describe, expect, it } from 'vitest';
import type { SavedLists } from './Backup.ts';
import { readBackup } from './readBackup.ts';
import { readSaved } from './readSaved.ts';
import { writeBackup } from './writeBackup.ts';

const saved = { revision: 'r2', past: ['r1'], changedAt: '2027-03-15T18:30:00Z' };
const client = {
  ...saved,
  id: 'a1',
  gymId: 'b1',
  client: {
    name: 'Winch hand',
    experience: 'some',
    bodyWeight: '78 kg',
    alone: true,
    health: {},
    sets: [
      {
        date: '2027-03-11',
        exercise: 'cable-pulldown',
        equipment: 'pulldown',
        load: '52.5 kg',
        reps: 10,
        tempo: { code: '1-0-3-0', order: 'lift-first' },
        end: 'failure',
      },
    ],
  },
};
const gym = {
  ...saved,
  id: 'b1',
  gym: {
    name: 'Boathouse',
    plates: [{ weight: '10 lb', pieces: 4 }],
    equipment: [{ kind: 'band', id: 'band', name: 'Band' }],
  },
};
const session = {
  ...saved,
  id: 'c1',
  clientId: 'a1',
  date: '2027-03-15',
  plan: { client: { name: '' }, gym: {}, intent: { date: 'soon' } },
  sets: [
    {
      date: '2027-03-15',
      exercise: 'chin-up',
      set: 1,
      side: 'left',
      load: { value: -20, unit: 'kg' },
      counts: 'added',
      bodyWeight: { value: 82, unit: 'kg' },
      reps: 8,
      end: { kind: 'reserve', repsLeft: 2 },
      tempo: '4-0-1-0',
      restSeconds: 150,
      tags: ['light'],
      note: 'grip gave way first',
    },
  ],
} as const;
const running = {
  id: 'd1',
  clientId: 'a1',
  startedAt: '2027-03-15T18:30:00.250Z',
  plan: session.plan,
  events: [{ kind: 'set-started', at: 0 }, 'anything', [1, null]],
};
const lists: SavedLists = {
  clients: [client],
  gyms: [gym],
  sessions: [session],
  running: [running],
};
const at = '2027-03-16T07:00:00Z';

describe('a backup', () => {
  it('reads back exactly as it was written', () => {
    const read = readBackup(writeBackup(lists, at));
    expect(read).toEqual({ ok: true, value: { lists, writtenAt: at, unread: [] } });
  });

  it('gives back a damaged record with its place and the reason, and reads the others', () => {
    const broken = { ...client, id: 'a2', client: { ...client.client, bodyWeight: '78' } };
    const file = writeBackup({ ...lists, clients: [broken, client, client] }, at);
    const read = readBackup(file);
    expect(read.ok && read.value.lists).toEqual(lists);
    expect(read.ok && read.value.unread).toMatchObject([
      { kind: 'clients', number: 1, problems: [{ path: ['client', 'bodyWeight'] }] },
      { kind: 'clients', number: 3, problems: [{ code: 'schema.id-twice' }] },
    ]);
    expect(read.ok && JSON.parse(read.value.unread[0]?.text ?? '')).toEqual(broken);
  });

  it('names a list that is none as one record', () => {
    const read = readBackup('{"format":"windlass-backup","version":1,"gyms":"many"}');
    expect(read.ok && read.value.unread).toMatchObject([
      { kind: 'gyms', number: 1, text: '"many"' },
    ]);
  });

  it.each([
    ['', 'schema.not-a-backup'],
    ['{"format":"windlass-backup","version":1,"clients":[', 'schema.not-a-backup'],
    ['[]', 'schema.not-a-backup'],
    ['null', 'schema.not-a-backup'],
    ['{"format":"windlass-backup","version":"2"}', 'schema.not-a-backup'],
    ['{"format":"windlass-log","version":1,"sets":[]}', 'schema.not-a-backup'],
    ['{"format":"windlass-backup","version":0}', 'schema.not-a-backup'],
    ['{"format":"windlass-backup","version":"1"}', 'schema.not-a-backup'],
    ['{"format":"windlass-backup","version":9}', 'schema.newer-backup'],
  ])('answers %j with %s', (text, code) => {
    const read = readBackup(text);
    expect(read.ok ? [] : read.problems.map((problem) => problem.code)).toEqual([code]);
  });

  it('takes no other thing for the time when it was written', () => {
    const read = readBackup('{"format":"windlass-backup","version":1,"writtenAt":{"year":2027}}');
    expect(read.ok && read.value.writtenAt).toBe('');
  });

  it('reads a file with a byte-order mark', () => {
    expect(readBackup(`\uFEFF${writeBackup(lists, at)}`).ok).toBe(true);
  });
});

describe('a kept record', () => {
  it.each([
    ['a load in words', { load: '20 kg' }, ['load']],
    ['a load below what can be helped', { load: { value: -1001, unit: 'kg' } }, ['load']],
    ['more decimals than a load has', { load: { value: 1e-12, unit: 'kg' } }, ['load']],
    ['a body weight below nothing', { bodyWeight: { value: -1, unit: 'kg' } }, ['bodyWeight']],
    ['a day that does not exist', { date: '2027-02-29' }, ['date']],
    ['a tempo that cannot be read', { tempo: 'slowly' }, ['tempo']],
    ['half a repetition', { reps: 7.5 }, ['reps']],
  ])('is refused for %s', (_, change, path) => {
    const read = readSaved('sessions', { ...session, sets: [{ ...session.sets[0], ...change }] });
    expect(read.ok ? [] : read.problems.map((problem) => problem.path)).toEqual([
      ['sets', 0, ...path],
    ]);
  });

  it('may lack its plan, but not hold another thing in its place', () => {
    const { plan: _, ...without } = session;
    expect(readSaved('sessions', without).ok).toBe(true);
    expect(readSaved('sessions', { ...session, plan: 'pull day' }).ok).toBe(false);
    expect(readSaved('sessions', { ...session, plan: { client: {}, gym: {} } }).ok).toBe(false);
  });

  it('is refused by itself where things lie inside one another without end', () => {
    const deep = '['.repeat(20_000) + ']'.repeat(20_000);
    const [head] = writeBackup(lists, at).split('"sessions"');
    const read = readBackup(`${head}"sessions":[{"id":"c9","plan":${deep}}]}`);
    expect(read.ok && read.value.lists.clients).toEqual(lists.clients);
    expect(read.ok && read.value.unread.map(({ problems }) => problems[0]?.code)).toEqual([
      'schema.too-deep',
    ]);
  });
});

it('has empty lists for what a backup does not hold', () => {
  const read = readBackup('{ "format": "windlass-backup", "version": 1 }');
  expect(read.ok && read.value.lists).toEqual({ clients: [], gyms: [], sessions: [], running: [] });
  expect(read.ok && read.value.unread).toEqual([]);
});

it('leaves out the text of a record that is too deep to be written', () => {
  const deep = `${'['.repeat(3000)}${']'.repeat(3000)}`;
  const read = readBackup(`{ "format": "windlass-backup", "version": 1, "gyms": [${deep}] }`);
  expect(read.ok && read.value.unread.map(({ text }) => text)).toEqual(['']);
});
