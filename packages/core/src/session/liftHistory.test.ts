import { describe, expect, it } from 'vitest';
import { toKg } from '../load/index.ts';
import { client, gym, pulldown, pulldownSets } from './boathouse.testing.ts';
import type { ClientSet } from './Client.ts';
import { liftHistory } from './liftHistory.ts';
import { liftOf } from './liftOf.ts';

const [known] = pulldownSets as readonly [ClientSet];

function historyOf(...sets: readonly ClientSet[]) {
  const lift = liftOf(pulldown, gym, client.bodyWeight);
  if (lift.kind !== 'lift') throw new Error(lift.message);
  return liftHistory(lift, { ...client, sets }, gym, '2027-03-15');
}

describe('liftHistory', () => {
  it('uses the first set of a day and counts the others as begun tired', () => {
    const history = historyOf(known, { ...known, reps: 7 }, { ...known, date: '2027-03-11' });
    expect(history.sets.map(({ reps }) => reps)).toEqual([10, 10]);
    expect(history.passedOver).toMatchObject([{ set: { reps: 7 } }]);
    expect(history.lastDate).toBe('2027-03-11');
  });

  it('leaves out what is more than six weeks older than the last set', () => {
    const old = { ...known, date: '2027-01-24' };
    expect(historyOf({ ...old, date: '2027-01-25' }, known).sets).toHaveLength(2);
    expect(historyOf(old, known).sets).toHaveLength(1);
    expect(historyOf(old).sets).toHaveLength(1);
  });

  it('sees them from the latest day, in whatever order they were written down', () => {
    const old = { ...known, date: '2027-01-20' };
    for (const sets of [
      [known, old],
      [old, known],
    ]) {
      expect(historyOf(...sets)).toMatchObject({
        lastDate: '2027-03-08',
        passedOver: [{ set: old, why: 'more than six weeks older than the last one' }],
      });
    }
  });

  it('knows nothing of what comes after the session, and of other equipment', () => {
    const later = { ...known, date: '2027-03-16' };
    const elsewhere = { ...known, equipment: 'cable' };
    expect(historyOf(later, elsewhere)).toEqual({
      sets: [],
      passedOver: [{ kind: 'passed-over', set: later, why: 'dated after the session' }],
    });
  });

  it('names the last day of a set that is used', () => {
    const station = liftOf(
      { ...pulldown, exercise: 'chin-up', equipment: 'station' },
      gym,
      client.bodyWeight,
    );
    if (station.kind !== 'lift') throw new Error(station.message);
    const chin = { ...known, exercise: 'chin-up', equipment: 'station' };
    const sets: readonly ClientSet[] = [
      { ...chin, date: '2027-03-01', load: { value: 0, unit: 'kg' } },
      { ...chin, date: '2027-03-10', load: { value: -78, unit: 'kg' } },
    ];
    const history = liftHistory(station, { ...client, sets }, gym, '2027-03-15');
    expect(history.lastDate).toBe('2027-03-01');
    expect(history.passedOver.map(({ why }) => why)).toEqual(['done with as much help as load']);
    expect(historyOf({ ...known, date: '2027-03-12' }, known).lastDate).toBe('2027-03-12');
  });

  it('moves the body that was weighed on the day, otherwise the one of today', () => {
    const station = liftOf(
      { ...pulldown, exercise: 'chin-up', equipment: 'station' },
      gym,
      client.bodyWeight,
    );
    if (station.kind !== 'lift') throw new Error(station.message);
    const chin = {
      ...known,
      exercise: 'chin-up',
      equipment: 'station',
      load: { value: 5, unit: 'kg' },
    } as const;
    const heavier = { ...chin, date: '2027-03-09', bodyWeight: { value: 82, unit: 'kg' } } as const;
    const { sets } = liftHistory(station, { ...client, sets: [chin, heavier] }, gym, '2027-03-15');
    expect(sets.map(({ load }) => toKg(load))).toEqual([83, 87]);
  });

  it('knows the pace only where the tempo was noted', () => {
    const { tempo: _, ...untimed } = known;
    const { sets } = historyOf(untimed, { ...known, date: '2027-03-09' });
    expect(sets.map((set) => set.secondsPerRep)).toEqual([undefined, 6]);
    expect(sets[0]).not.toHaveProperty('secondsPerRep');
    // 9 March is 68 days after 1 January 2027, which is day 20819
    expect(sets[1]?.day).toBe(20_819 + 67);
  });

  it('takes a set on the day of the session, and counts six weeks from the last day before it', () => {
    const today = { ...known, date: '2027-03-15' };
    const old = { ...known, date: '2027-02-01' };
    expect(historyOf(today).lastDate).toBe('2027-03-15');
    // 1 February is 42 days before 15 March; a later set does not count
    expect(historyOf(old, today).sets).toHaveLength(2);
    expect(historyOf({ ...old, date: '2027-01-31' }, today).passedOver).toMatchObject([
      { why: 'more than six weeks older than the last one' },
    ]);
    expect(
      historyOf({ ...old, date: '2027-01-31' }, { ...known, date: '2027-03-16' }).sets,
    ).toHaveLength(1);
  });

  it('knows sets of this exercise only', () => {
    expect(historyOf({ ...known, exercise: 'cable-row' })).toEqual({ sets: [], passedOver: [] });
  });
});
