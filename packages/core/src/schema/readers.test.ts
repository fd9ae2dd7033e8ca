import { describe, expect, it } from 'vitest';
import type { Outcome } from '../basis/index.ts';
import { readBackup } from './readBackup.ts';
import { readClient } from './readClient.ts';
import { readGym } from './readGym.ts';
import { readHealth } from './readHealth.ts';
import { readIntent } from './readIntent.ts';
import { readSaved } from './readSaved.ts';

const set = {
  date: '2027-03-11',
  exercise: 'cable-row',
  equipment: 'cable',
  load: '50 kg',
  reps: 10,
  end: 'failure',
};
const client = { name: 'Winch hand', experience: 'some', alone: true, health: {}, sets: [set] };
const lift = {
  exercise: 'cable-row',
  equipment: 'cable',
  window: { minReps: 8, maxReps: 8 },
  tempo: '3-0-1-0',
  sets: 1,
  restSeconds: 120,
};
const intent = { date: '2027-03-15', unit: 'kg', changeSeconds: 60, lifts: [lift] };
const bar = { kind: 'barbell', id: 'bar', name: 'Bar', bar: '15 kg' };
const gym = { name: 'Boathouse', plates: [], equipment: [bar] };

function problemsOf(read: Outcome<unknown>) {
  return read.ok ? [] : read.problems;
}

describe('what is read', () => {
  it('is a client with the ends of sets spelled out, and the four phases of a tempo', () => {
    const tempo = {
      lowerSeconds: 3,
      pauseAfterLowerSeconds: 0,
      liftSeconds: 'X',
      pauseAfterLiftSeconds: 1,
    };
    const ends = ['failure', 'more', { kind: 'reserve', repsLeft: 2 }];
    const sets = ends.map((end) => ({ ...set, end, tempo }));
    const read = readClient({ ...client, sets });
    expect(read.ok && read.value.sets.map((one) => one.end)).toEqual([
      { kind: 'failure' },
      { kind: 'more', atLeast: 1 },
      { kind: 'reserve', repsLeft: 2 },
    ]);
    expect(read.ok && read.value.sets[0]?.tempo).toEqual(tempo);
  });

  it('is health and an intent, a window of one count among them', () => {
    expect(readHealth({ ageYears: 41 })).toEqual({ ok: true, value: { ageYears: 41 } });
    const read = readIntent(intent);
    expect(read.ok && read.value.lifts[0]?.window).toEqual({ minReps: 8, maxReps: 8 });
  });

  it('is a load exact in its own unit: a thousandth of a pound, 1e-11 kg, and nothing', () => {
    for (const collar of [
      { value: 0.001, unit: 'lb' },
      { value: 1e-11, unit: 'kg' },
      { value: 0, unit: 'kg' },
    ]) {
      expect(problemsOf(readGym({ ...gym, equipment: [{ ...bar, collar }] }))).toEqual([]);
    }
  });
});

describe('what is refused comes back with its place and what its sentence is made of', () => {
  it.each(['2027-3-28', '2027-03-28T00:00', 'on 2027-03-28', '2027-02-29', '0000-00-00'])(
    'no day: %s',
    (date) => {
      expect(problemsOf(readIntent({ ...intent, date }))).toMatchObject([{ path: ['date'] }]);
    },
  );

  it('a window that is upside down', () => {
    const lifts = [{ ...lift, window: { minReps: 9, maxReps: 8 } }];
    expect(problemsOf(readIntent({ ...intent, lifts }))).toMatchObject([
      { code: 'window.upside-down', path: ['lifts', 0, 'window'] },
    ]);
  });

  it.each([
    ['20', { code: 'load.no-unit' }],
    ['-5 kg', { code: 'load.negative' }],
    ['20 stone', { code: 'load.unknown-unit', params: { word: 'stone' } }],
    [{ value: 1e-12, unit: 'kg' }, { code: 'load.not-exact' }],
    [{ value: 0.0001, unit: 'lb' }, { code: 'load.not-exact' }],
  ])('a weight of %j', (weight, problem) => {
    expect(problemsOf(readGym({ ...gym, plates: [{ weight, pieces: 2 }] }))).toMatchObject([
      { ...problem, path: ['plates', 0, 'weight'] },
    ]);
  });

  it('a field that nobody knows, by its name', () => {
    expect(problemsOf(readGym({ ...gym, colour: 'grey' }))).toMatchObject([
      { code: 'schema.unknown-field', path: ['colour'], params: { field: 'colour' } },
    ]);
  });

  it('a tempo of which a part is too long, by the part', () => {
    const lifts = [{ ...lift, tempo: '61-0-1-0' }];
    expect(problemsOf(readIntent({ ...intent, lifts }))).toMatchObject([
      {
        code: 'tempo.phase-too-long',
        path: ['lifts', 0, 'tempo'],
        params: { phase: 'lower', longest: 60 },
      },
    ]);
  });

  it('a backup of a later version, and what is none', () => {
    expect(problemsOf(readBackup('{"format":"windlass-backup","version":9}'))).toMatchObject([
      { code: 'schema.newer-backup', path: ['version'], params: { version: 9 } },
    ]);
    for (const text of [
      'null',
      '7',
      '"windlass-backup"',
      '{"version":1}',
      '{"format":"windlass-backup",\uFEFF"version":1}',
    ]) {
      expect(problemsOf(readBackup(text))).toMatchObject([{ code: 'schema.not-a-backup' }]);
    }
  });

  it('a kept set with a load that its unit cannot hold', () => {
    const kept = { revision: 'r', past: [], changedAt: '2027-03-15T18:30:00Z' };
    const logged = { date: '2027-03-15', exercise: 'chin-up', set: 1, counts: 'total', reps: 8 };
    const withLoad = (value: number, unit: string) =>
      readSaved('sessions', {
        ...kept,
        id: 'c1',
        clientId: 'a1',
        date: '2027-03-15',
        sets: [{ ...logged, load: { value, unit } }],
      }).ok;
    expect(withLoad(-1000, 'kg')).toBe(true);
    expect(withLoad(0.001, 'lb')).toBe(true);
    expect(withLoad(0.00001, 'kg')).toBe(true);
    expect(withLoad(0.00001, 'lb')).toBe(false);
  });
});
