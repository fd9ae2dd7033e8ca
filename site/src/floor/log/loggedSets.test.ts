import { readLogCsv, readLogJson, writeLogCsv, writeLogJson } from '@windlass/core/progress';
import { describe, expect, it } from 'vitest';
import { firstExample } from '../../planner/state/examples.ts';
import type { FloorEvent, FloorHappening } from '../run/FloorEvent.ts';
import { foldEvents } from '../run/foldEvents.ts';
import { openPlan } from '../session/openPlan.ts';
import { dayDone } from './dayDone.ts';
import { loggedSets } from './loggedSets.ts';

const opened = openPlan(firstExample);
if (opened.kind === 'wrong') throw new Error(opened.message);
const { session } = opened;

function done(...log: readonly (readonly [seconds: number, what: FloorHappening])[]) {
  const events = log.map(([seconds, what]): FloorEvent => ({ ...what, at: seconds * 1000 }));
  return loggedSets(session, foldEvents(session, events), '2027-03-15');
}
const begin = { kind: 'begun', leadInSeconds: 0, counted: false } as const;
const reps = (count: number) =>
  Array.from({ length: count }, () => [30, { kind: 'rep', by: 'hand' }] as const);
const left = (repsLeft: number) => ({ kind: 'told', end: { kind: 'reserve', repsLeft } }) as const;

/** Straight to the work sets of the row, whose warm-up has three sets. */
const row = [
  [0, { kind: 'gone-to', step: 3 }],
  [10, begin],
  ...reps(9),
  [60, { kind: 'failed' }],
  [200, begin],
  ...reps(8),
  [240, { kind: 'stopped' }],
  [245, left(1)],
] as const;

describe('loggedSets', () => {
  it('has the work sets with load, end, tempo and the rest that was taken', () => {
    const common = {
      date: '2027-03-15',
      exercise: 'barbell-bent-over-row',
      counts: 'total',
      load: { value: 55.4, unit: 'kg' },
      bodyWeight: { value: 78, unit: 'kg' },
      equipment: 'short-bar',
      tempo: '3-0-2-0',
    };
    expect(done(...row)).toEqual([
      { ...common, set: 1, reps: 9, end: { kind: 'failure' } },
      { ...common, set: 2, reps: 8, end: { kind: 'reserve', repsLeft: 1 }, restSeconds: 140 },
    ]);
  });

  it('leaves warm-up sets out', () => {
    expect(done([0, { kind: 'done' }])).toEqual([]);
  });

  it('counts the sides of a set apart, under one number', () => {
    const sides = done(
      [0, { kind: 'gone-to', step: 7 }],
      [1, begin],
      ...reps(10),
      [40, { kind: 'failed' }],
      [50, begin],
      ...reps(11),
      [90, { kind: 'failed' }],
    );
    expect(sides.map(({ side, set, reps: count, hands }) => [side, set, count, hands])).toEqual([
      ['left', 1, 10, 1],
      ['right', 1, 11, 1],
    ]);
  });

  it('notes a sign, and tells nothing of how the set would have ended', () => {
    const [set] = done([0, { kind: 'gone-to', step: 3 }], [10, begin], ...reps(4), [
      40,
      { kind: 'sign', rule: 'breath-held', ends: 'the-set' },
    ]);
    expect(set).toMatchObject({ reps: 4, note: 'A breath that is held and cannot be let go' });
    expect(set?.end).toBeUndefined();
  });

  it('is read back from both files as it was', () => {
    const sets = done(...row);
    expect(readLogCsv(writeLogCsv(sets)).sets).toEqual(sets);
    expect(readLogJson(writeLogJson(sets)).sets).toEqual(sets);
  });
});

describe('dayDone', () => {
  it('is today, unless the log is ahead of it', () => {
    expect(dayDone('2027-03-15', ['2027-03-08', '2027-03-11'], '2027-03-16')).toBe('2027-03-16');
    expect(dayDone('2027-03-15', ['2027-03-11'], '2026-01-04')).toBe('2027-03-15');
    expect(dayDone('2027-03-15', [], '2026-01-04')).toBe('2026-01-04');
  });
});
