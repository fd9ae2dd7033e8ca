import { describe, expect, it } from 'vitest';
import { calendarRequest, rotations, weeks } from './oracle/calendarCases.ts';
import { calendarQuestion } from './oracle/calendarQuestion.ts';
import { mostSessionsByMip } from './oracle/mostSessionsByMip.ts';
import { planCalendar } from './planCalendar.ts';

describe('planCalendar against a general mixed-integer solver', () => {
  for (const { name, days } of weeks) {
    for (const rotation of rotations) {
      for (const order of ['as-listed', 'any-in-round'] as const) {
        it(`places as many sessions: ${name}, ${rotation.length} in rotation, ${order}`, async () => {
          const request = calendarRequest(days, rotation, order);
          const plan = planCalendar(request);
          const placed = plan.kind === 'planned' ? plan.sessions.length : 0;
          expect(placed).toBe(await mostSessionsByMip(calendarQuestion(request)));
        });
      }
    }
  }
});
