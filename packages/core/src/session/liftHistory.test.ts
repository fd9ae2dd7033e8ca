import { describe, expect, it } from 'vitest';
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

  it('knows nothing of what comes after the session, and of other equipment', () => {
    const later = { ...known, date: '2027-03-16' };
    const elsewhere = { ...known, equipment: 'cable' };
    expect(historyOf(later, elsewhere)).toEqual({
      sets: [],
      passedOver: [{ kind: 'passed-over', set: later, why: 'dated after the session' }],
    });
  });
});
