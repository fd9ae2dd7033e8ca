import { describe, expect, it } from 'vitest';
import type { CalendarRequest, OpenHours } from '../Calendar.ts';
import { modelOf } from './CalendarModel.ts';
import { firstLabel } from './firstLabel.ts';
import { place } from './place.ts';
import { upperBounds } from './upperBounds.ts';

/** Every evening at 18:00 and 18:30, from Monday on. */
const request = (days: number, part: Partial<CalendarRequest> = {}): CalendarRequest => ({
  zone: 'UTC',
  firstDay: '2026-03-02',
  days,
  rota: { firstDay: '2026-03-02', days: [{ open: [{ from: '18:00', to: '19:30' }] }] },
  sessions: [{ id: 'a', name: 'A', minutes: 60, muscles: { lats: 48 } }],
  ...part,
});
/** What can follow the first session, placed at a start. */
function bound(asked: CalendarRequest, start: number): number {
  const model = modelOf(asked);
  return upperBounds(model)(place(firstLabel(asked, model), model, 0, start));
}

describe('upperBounds', () => {
  it('counts by the pause: Wednesday, Friday and Sunday after Monday at 18:00', () => {
    expect(bound(request(7), 0)).toBe(3);
    // from 18:30 on too, at 18:30
    expect(bound(request(7), 1)).toBe(3);
    expect(bound(request(7), 8)).toBe(1);
    expect(bound(request(7), 12)).toBe(0);
    expect(bound(request(7), 13)).toBe(0);
  });

  it('counts by the room that the weeks leave', () => {
    expect(bound(request(7, { perWeek: 2 }), 0)).toBe(1);
    // one more this week, two in the next
    expect(bound(request(14, { perWeek: 2 }), 0)).toBe(3);
    // the second week has a single day
    expect(bound(request(8, { perWeek: 3 }), 0)).toBe(3);
    // no pause: the six days that are left, two starts each
    const sessions = [{ id: 'a', name: 'A', minutes: 60, muscles: {} }];
    expect(bound(request(7, { sessions }), 0)).toBe(6);
    expect(bound(request(7, { sessions }), 11)).toBe(1);
    // two more this week and the single day of the second, though it has two starts
    expect(bound(request(8, { sessions, perWeek: 3 }), 0)).toBe(3);
    // after Sunday nothing is left of the first week: the three of the second
    expect(bound(request(14, { sessions, perWeek: 3 }), 12)).toBe(3);
  });

  it('counts by the pause of a session with itself where others may come between', () => {
    const muscles = [{ lats: 72 }, { vasti: 96 }];
    const sessions = muscles.map((needs, i) => ({
      id: `${i}`,
      name: '',
      minutes: 60,
      muscles: needs,
    }));
    // 72 h at the least: of each one on Tuesday and one on Friday
    expect(bound(request(7, { sessions }), 0)).toBe(4);
    // 48 h at the least, so three of each could follow; the week has six days left
    const sooner = sessions.map((one, i) => (i === 0 ? { ...one, muscles: { lats: 48 } } : one));
    expect(bound(request(7, { sessions: sooner }), 0)).toBe(6);
  });

  it('counts one session a day, however short the pause', () => {
    const [early, morning, evening] = ['05', '07', '20'].map((hour) => ({
      from: `${hour}:00`,
      to: `${hour}:59`,
    })) as [OpenHours, OpenHours, OpenHours];
    const days = [{ open: [evening] }, { open: [morning] }, { open: [early, evening] }];
    const sessions = [{ id: 'a', name: 'A', minutes: 50, muscles: { lats: 14 } }];
    // from Monday 20:00 on, Tuesday 7:00 is too soon, and Wednesday is one day
    const asked = request(3, { rota: { firstDay: '2026-03-02', days }, sessions });
    expect(bound(asked, 0)).toBe(1);
  });
});
