import { describe, expect, it } from 'vitest';
import type { PlacedSession } from './Calendar.ts';
import { calendarEntries } from './calendarEntries.ts';

const placed = (number: number, part: Partial<PlacedSession> = {}): PlacedSession => ({
  number,
  session: 'all',
  name: 'Whole body',
  start: `2026-03-0${number}T18:00`,
  end: `2026-03-0${number}T19:00`,
  startsAt: `2026-03-0${number}T17:00:00Z`,
  endsAt: `2026-03-0${number}T18:00:00Z`,
  date: `2026-03-0${number}`,
  light: false,
  gaps: [],
  ...part,
});
const states = (entries: ReturnType<typeof calendarEntries>) =>
  entries.map(({ uid, sequence, status }) => [uid, sequence, status]);

describe('calendarEntries', () => {
  const before = calendarEntries({ planId: 'p', sessions: [placed(1), placed(2)] });

  it('counts a change of whatever a calendar shows', () => {
    for (const part of [
      { startsAt: '2026-03-01T17:30:00Z' },
      { endsAt: '2026-03-01T18:30:00Z' },
      { name: 'All of it' },
      { light: true },
      { gym: 'boathouse' },
    ]) {
      const sessions = [placed(1, part), placed(2)];
      expect(states(calendarEntries({ planId: 'p', sessions, previous: before }))).toEqual([
        ['p-1@windlass', 1, 'confirmed'],
        ['p-2@windlass', 0, 'confirmed'],
      ]);
    }
  });

  it('cancels once what is gone, and keeps the order of the numbers', () => {
    const sessions = [placed(2)];
    const gone = { planId: 'p', sessions, from: '2026-03-01' };
    const once = calendarEntries({ ...gone, previous: before });
    expect(states(once)).toEqual([
      ['p-1@windlass', 1, 'cancelled'],
      ['p-2@windlass', 0, 'confirmed'],
    ]);
    expect(calendarEntries({ ...gone, previous: once })).toEqual(once);
  });

  it('leaves what lies before the first session of the plan, when no date is given', () => {
    const sessions = [placed(2)];
    expect(calendarEntries({ planId: 'p', sessions, previous: before })).toEqual(before);
  });

  it('cancels everything when nothing is left of the plan', () => {
    const none = calendarEntries({ planId: 'p', sessions: [], previous: before });
    expect(none.map(({ status }) => status)).toEqual(['cancelled', 'cancelled']);
  });
});
