import { describe, expect, it } from 'vitest';
import type { CalendarRequest } from '../Calendar.ts';
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
  });
});
