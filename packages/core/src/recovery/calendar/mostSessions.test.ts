import { describe, expect, it } from 'vitest';
import type { CalendarRequest, RotaSession } from '../Calendar.ts';
import { modelOf } from './CalendarModel.ts';
import { firstLabel } from './firstLabel.ts';
import { mostSessions } from './mostSessions.ts';

const session = (id: string, muscles: Record<string, number>): RotaSession => ({
  id,
  name: id,
  minutes: 60,
  muscles,
});
/** Every evening from Monday the 2nd of March on, in any order. */
const request = (part: Partial<CalendarRequest>): CalendarRequest => ({
  zone: 'UTC',
  firstDay: '2026-03-02',
  days: 4,
  rota: { firstDay: '2026-03-02', days: [{ open: [{ from: '18:00', to: '19:00' }] }] },
  sessions: [],
  order: 'any-in-round',
  ...part,
});
const most = (asked: CalendarRequest) => {
  const model = modelOf(asked);
  return mostSessions(model, firstLabel(asked, model))?.count;
};

describe('mostSessions', () => {
  it('keeps a way that owes another session, though it leaves more muscles unready', () => {
    // grip first: legs on Tuesday, grip on Wednesday, and legs not before Friday. Legs first: grip
    // on Tuesday and Wednesday, legs again 72 h after Monday, on Thursday.
    const sessions = [session('grip', {}), session('legs', { vasti: 72 })];
    expect(most(request({ sessions }))).toBe(4);
  });

  it('keeps a way that ended on an earlier day, though its muscles are ready later', () => {
    // Pull on Monday leaves curls no sooner than Wednesday 7:00, and nothing more on that day. Curls
    // on Monday: pull on Tuesday at 7:00, 13 h later, and all is ready again at 19:00 on Wednesday.
    const at = (hour: string) => ({ from: `${hour}:00`, to: `${hour}:30` });
    const days = [{ open: [at('18')] }, { open: [at('07')] }, { open: [at('07'), at('20')] }];
    const sessions = [session('pull', { biceps: 36 }), session('curls', { biceps: 10 })].map(
      (one) => ({ ...one, minutes: 30 }),
    );
    expect(most(request({ days: 3, rota: { firstDay: '2026-03-02', days }, sessions }))).toBe(3);
  });

  it('finds the number of four weeks soon, of 24 orders a round', () => {
    // a session a day at most: 28, and each comes again after 4 days, 96 h
    const muscles = ['lats', 'vasti', 'pectoralis-major', 'biceps'];
    const sessions = muscles.map((muscle) => session(muscle, { [muscle]: 90 }));
    expect(most(request({ days: 28, sessions }))).toBe(28);
  });
});
