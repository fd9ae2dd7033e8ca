import { describe, expect, it } from 'vitest';
import { pulldownSets } from './boathouse.testing.ts';
import type { ClientSet } from './Client.ts';
import { likeSessions } from './likeSessions.ts';

const [known] = pulldownSets as readonly [ClientSet];
const days = (...sets: readonly Partial<ClientSet>[]) =>
  likeSessions('vertical-pull', { sets: sets.map((set) => ({ ...known, ...set })) }, '2027-03-15');

describe('likeSessions', () => {
  it('counts each earlier day with the same movement once, the day itself as well', () => {
    // 8 March is a week before, 1 March two
    expect(days({}, {}, { date: '2027-03-01', exercise: 'chin-up' })).toEqual([7, 14]);
    expect(days({ date: '2027-03-15' })).toEqual([0]);
  });

  it('leaves out other movements, unknown names, later days and what is half a year ago', () => {
    expect(days({ exercise: 'cable-row' }, { exercise: 'my-own' })).toEqual([]);
    expect(days({ date: '2027-03-16' })).toEqual([]);
    // 13 September 2026 is 183 days before 15 March 2027
    expect(days({ date: '2026-09-13' })).toEqual([183]);
    expect(days({ date: '2026-09-12' })).toEqual([]);
  });

  it('knows nothing without a log', () => {
    expect(days()).toBeUndefined();
  });
});
