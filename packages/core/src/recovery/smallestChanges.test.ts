import { describe, expect, it } from 'vitest';
import type { CalendarRequest, DayHours, RotaSession } from './Calendar.ts';
import { smallestChanges } from './smallestChanges.ts';

const evening: DayHours = { open: [{ from: '18:00', to: '19:00' }] };
const off: DayHours = { open: [] };
const all: RotaSession = { id: 'all', name: 'All', minutes: 60, muscles: { lats: 50, biceps: 49 } };
const base: CalendarRequest = {
  zone: 'UTC',
  firstDay: '2026-03-02',
  days: 3,
  rota: { firstDay: '2026-03-02', days: [evening] },
  sessions: [all],
};

describe('smallestChanges', () => {
  it('eases every muscle that stands in the way, named in order', () => {
    // Monday and Wednesday are 48 h apart: 50 less 2
    expect(smallestChanges(base)).toEqual([
      { kind: 'less-work', hours: 2, muscles: ['biceps', 'lats'], sessions: 2 },
    ]);
  });

  it('counts what was done before', () => {
    // 49 h before Monday 18:00; then the 4th is 48 h later
    const done = [{ session: 'all', start: '2026-02-28T17:00' }];
    expect(smallestChanges({ ...base, done })[0]).toEqual({
      kind: 'less-work',
      hours: 2,
      muscles: ['biceps', 'lats'],
      sessions: 2,
    });
    const soon = [{ session: 'all', start: '2026-03-01T18:00' }];
    // 50 h after the 1st is the 3rd at 20:00, so only the 4th is left; 26 less lets every day hold one
    expect(smallestChanges({ ...base, done: soon })[0]).toMatchObject({ hours: 26, sessions: 3 });
  });

  it('eases and shortens light sessions too', () => {
    const lightDates = [{ from: '2026-03-02', to: '2026-03-04' }];
    const light = (minutes: number, hours: number) => ({
      ...base,
      lightDates,
      sessions: [{ ...all, muscles: { lats: 90 }, light: { minutes, muscles: { lats: hours } } }],
    });
    expect(smallestChanges(light(60, 51))).toEqual([
      { kind: 'less-work', hours: 3, muscles: ['lats'], sessions: 2 },
    ]);
    // 70 minutes into an hour: 10 less
    expect(smallestChanges({ ...light(70, 20), perWeek: 1 })).toEqual([
      { kind: 'shorter-sessions', minutes: 10, sessions: 1 },
    ]);
  });

  it('shortens by all but a minute, if it must', () => {
    const rota = { firstDay: '2026-03-02', days: [{ open: [{ from: '18:00', to: '18:01' }] }] };
    expect(smallestChanges({ ...base, rota, perWeek: 1 })).toEqual([
      { kind: 'shorter-sessions', minutes: 59, sessions: 1 },
    ]);
  });

  it('opens a day of the plan, the first that helps, with the hours of another', () => {
    const rota = { firstDay: '2026-03-02', days: [evening, off, off, off] };
    const sessions = [{ ...all, muscles: { lats: 48 } }];
    expect(smallestChanges({ ...base, rota, sessions })).toEqual([
      { kind: 'another-day', date: '2026-03-04', open: evening.open[0], sessions: 2 },
    ]);
    // with two days there is none that is 48 h later
    expect(smallestChanges({ ...base, days: 2, rota, sessions })).toEqual([]);
  });

  it('opens none where no hours are known', () => {
    expect(smallestChanges({ ...base, rota: { firstDay: '2026-03-02', days: [off] } })).toEqual([]);
  });

  it('takes the sessions of a round in any order', () => {
    // pull on the 1st needs 60 h, so it waits for the 4th; legs could have the 2nd
    const sessions: RotaSession[] = [
      { id: 'pull', name: 'Pull', minutes: 60, muscles: { lats: 60 } },
      { id: 'legs', name: 'Legs', minutes: 60, muscles: { vasti: 60 } },
    ];
    const done = [
      { session: 'legs', start: '2026-02-20T18:00' },
      { session: 'pull', start: '2026-02-19T18:00' },
      { session: 'pull', start: '2026-03-01T18:00' },
      { session: 'legs', start: '2026-02-22T18:00' },
    ];
    const changes = smallestChanges({
      ...base,
      days: 2,
      sessions,
      perWeek: 1,
      done: done.slice(0, 2),
    });
    expect(changes).toEqual([]);
    const request: CalendarRequest = {
      ...base,
      days: 3,
      sessions,
      notReadyBefore: { lats: '2026-03-04T18:00:00Z' },
    };
    expect(smallestChanges(request).find(({ kind }) => kind === 'any-order')).toEqual({
      kind: 'any-order',
      sessions: 2,
    });
  });

  it('suggests nothing when the fixed sessions cannot stay', () => {
    const fixed = ['02', '03'].map((day) => ({ session: 'all', start: `2026-03-${day}T18:00` }));
    const [first] = smallestChanges({ ...base, fixed });
    // 24 h apart: 26 less, and then all three days could hold one
    expect(first).toEqual({
      kind: 'less-work',
      hours: 26,
      muscles: ['biceps', 'lats'],
      sessions: 3,
    });
  });

  it('shortens by more than the shortest session lasts, if it must', () => {
    const sessions: RotaSession[] = [
      { id: 'brief', name: 'Brief', minutes: 10, muscles: {} },
      { id: 'long', name: 'Long', minutes: 100, muscles: {} },
    ];
    const rota = { firstDay: '2026-03-02', days: [{ open: [{ from: '18:00', to: '18:45' }] }] };
    // 100 into 45 minutes: 55 less, and then every day holds one
    expect(smallestChanges({ ...base, rota, sessions })[0]).toEqual({
      kind: 'shorter-sessions',
      minutes: 55,
      sessions: 3,
    });
  });

  it('opens no day that is open, however short', () => {
    const short: DayHours = { open: [{ from: '18:00', to: '18:30' }] };
    const rota = { firstDay: '2026-03-02', days: [evening, short, short] };
    const sessions = [{ ...all, muscles: {} }];
    expect(smallestChanges({ ...base, rota, sessions }).map(({ kind }) => kind)).toEqual([
      'shorter-sessions',
    ]);
  });
});
