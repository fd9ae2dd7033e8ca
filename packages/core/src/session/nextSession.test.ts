import { describe, expect, it } from 'vitest';
import { client, gym, intentOf, pulldown, pulldownSets } from './boathouse.testing.ts';
import type { Client, ClientSet } from './Client.ts';
import type { SessionIntent } from './Intent.ts';
import { planSession } from './planSession.ts';
import { readyAfter } from './readyAfter.ts';

const [known] = pulldownSets as readonly [ClientSet];
/** Six weekly sessions of pulldowns, so that they are nothing new. */
const familiar: Client = {
  ...client,
  sets: ['02-01', '02-08', '02-15', '02-22', '03-01', '03-08'].map((day) => ({
    ...known,
    date: `2027-${day}`,
  })),
};

function session(intent: SessionIntent, who: Client = familiar) {
  const plan = planSession({ client: who, gym, intent });
  if (plan.kind !== 'session') throw new Error(plan.kind);
  return plan;
}

function nextOf(intent: SessionIntent, who?: Client) {
  const { next } = session(intent, who);
  if (!next) throw new Error('no next session');
  return next;
}

const single = intentOf({ ...pulldown, sets: 3 });

describe('the next session', () => {
  it('comes when the last muscle is ready, by elapsed hours and by date', () => {
    const next = nextOf(single);
    // e^2.9 · 3^0.79 = 43.3 h for three hard sets; what is left of newness after six sessions adds
    // at most 0.3^5 of ln 2.1, far below an hour.
    expect(next.likely.hours).toBeGreaterThan(43);
    expect(next.likely.hours).toBeLessThan(44.3);
    expect(next.likely.date).toBe('2027-03-17');
    expect(next.date).toBe('2027-03-17');
    expect(next.earliest.hours).toBeLessThan(next.likely.hours);
    expect(next.cautious.hours).toBeGreaterThan(next.likely.hours);
    expect(next.muscles[0]?.muscle).toBe('lats');
  });

  it('is later after more sets, after new work and with reports', () => {
    const hours = (intent: SessionIntent, who?: Client) => nextOf(intent, who).likely.hours;
    const usual = hours(single);
    expect(hours(intentOf({ ...pulldown, sets: 5 }))).toBeGreaterThan(usual);
    expect(hours(single, client)).toBeGreaterThan(usual);
    const tired = {
      ...familiar,
      reports: { shortNights: 2, soreness: { lats: 'clear' as const } },
    };
    // A quarter longer for soreness, a tenth for each short night.
    expect(hours(single, tired)).toBeCloseTo(usual * 1.25 * 1.2, 6);
  });

  it('crosses the end of a month and a leap day', () => {
    expect(nextOf({ ...single, date: '2027-03-30' }).date).toBe('2027-04-01');
    const sets = familiar.sets.map((set, at) => ({ ...set, date: `2028-02-${10 + 3 * at}` }));
    const leap = nextOf({ ...single, date: '2028-02-28' }, { ...familiar, sets });
    expect(leap.date).toBe('2028-03-01');
  });

  it('is the one that somebody has fixed, with what is to be said about it', () => {
    const fixed = (nextDate: string) => session({ ...single, overrules: { nextDate } });
    const early = fixed('2027-03-16').next;
    expect(early).toMatchObject({ date: '2027-03-16', overruled: { chosen: '2027-03-17' } });
    expect(early?.notes).toHaveLength(1);
    expect(fixed('2027-03-20').next).toMatchObject({ date: '2027-03-20', notes: [] });
    expect(fixed('2027-03-17').next).toEqual(nextOf(single));
    for (const day of ['2027-03-16', '2027-03-17', '2027-03-20'])
      expect(fixed(day).refused).toEqual([]);
  });

  it('is never on the day of this one or before', () => {
    const plan = session({ ...single, overrules: { nextDate: '2027-03-15' } });
    expect(plan.refused).toMatchObject([{ what: 'next-date', code: 'session.next-not-after' }]);
    expect(plan.refused[0]?.message).toContain('2027-03-16');
    expect(plan.next).toEqual(nextOf(single));
  });

  it('is none where nothing is done', () => {
    const nothing = session(intentOf({ ...pulldown, equipment: 'nowhere' }));
    expect(nothing.next).toBeUndefined();
    expect(nothing.refused).toEqual([]);
  });

  it('has other words for a day before the likely one than for one before the earliest', () => {
    // sets of 43 hours: the earliest day is the 16th or 17th, the likely one the 17th
    const many = intentOf({ ...pulldown, sets: 8 });
    const { earliest, likely } = nextOf(many);
    expect(earliest.date < likely.date).toBe(true);
    const notes = (nextDate: string) => nextOf({ ...many, overrules: { nextDate } }).notes;
    const [between, before] = [notes(earliest.date), notes('2027-03-16')];
    expect(between).toHaveLength(1);
    expect(before).toHaveLength(1);
    expect(earliest.date > '2027-03-16' ? between[0] : '').not.toBe(before[0]);
    expect(notes(likely.date)).toEqual([]);
  });

  it('counts a lift that is looked for by all of its trial sets, with what is left in them', () => {
    const curl = { ...pulldown, exercise: 'dumbbell-curl', equipment: 'dumbbells' };
    const plan = session(intentOf(curl));
    const [lift] = plan.lifts;
    if (lift?.kind !== 'finding') throw new Error(lift?.kind);
    const ready = readyAfter(
      [{ exercise: lift.lift.exercise, sets: lift.mostTries, repsInReserve: lift.stopWithLeft }],
      familiar,
      '2027-03-15',
    );
    expect(plan.next).toMatchObject({ ...ready });
  });

  it('counts a last set past failure by its stages, and the others as they end', () => {
    const chain = { stages: [{ kind: 'hold', at: 'middle', maxSeconds: 20 } as const] };
    const plan = session(intentOf({ ...pulldown, sets: 3, chain }));
    const [lift] = plan.lifts;
    if (lift?.kind !== 'planned') throw new Error(lift?.kind);
    const { exercise } = lift.lift;
    const ready = readyAfter(
      [
        { exercise, sets: 2, repsInReserve: 0 },
        { exercise, sets: 1, stagesPastFailure: 1 },
      ],
      familiar,
      '2027-03-15',
    );
    expect(plan.next).toMatchObject({ ...ready });
  });
});
