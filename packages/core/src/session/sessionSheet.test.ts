import { describe, expect, it } from 'vitest';
import { client, gym, intentOf, pulldown } from './boathouse.testing.ts';
import { planSession } from './planSession.ts';
import { printSheet } from './printSheet.ts';
import { sessionSheet } from './sessionSheet.ts';

const barRow = {
  ...pulldown,
  exercise: 'barbell-bent-over-row',
  equipment: 'short-bar',
};
const rowSets = [
  {
    date: '2027-03-11',
    exercise: 'barbell-bent-over-row',
    equipment: 'short-bar',
    load: { value: 55, unit: 'kg' },
    reps: 10,
    end: { kind: 'failure' },
    tempo: pulldown.tempo,
  },
] as const;
const known = { ...client, sets: [...client.sets, ...rowSets] };

describe('sessionSheet', () => {
  const plan = planSession({ client: known, gym, intent: intentOf(barRow, pulldown) });
  const sheet = sessionSheet(plan);

  it('is plain data', () => {
    expect(JSON.parse(JSON.stringify(sheet))).toEqual(sheet);
  });

  it('says loads as people count them and how to put them together', () => {
    if (sheet.kind !== 'sheet') throw new Error(sheet.kind);
    const [row, pull] = sheet.lifts;
    if (row?.kind !== 'planned' || pull?.kind !== 'planned') throw new Error('not planned');
    expect(row.load.words).toMatch(/\skg in total, with the bar$/);
    expect(row.load.loading).toMatch(/^each side /);
    expect(row.warmUp[0]?.load.words).toContain('15');
    expect(row.warmUp.slice(1).every(({ change }) => change.includes('each side'))).toBe(true);
    expect(pull.load.loading).toMatch(/^pin at /);
    expect(pull.count).toBe('lift 2\u00a0s, lower 4\u00a0s');
  });

  it('prints within 78 characters, without a number that is none', () => {
    const text = printSheet(sheet);
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(78);
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('speaks the unit that was asked for', () => {
    const inPounds = { ...intentOf(pulldown), unit: 'lb' } as const;
    const pounds = sessionSheet(planSession({ client, gym, intent: inPounds }));
    if (pounds.kind !== 'sheet' || pounds.lifts[0]?.kind !== 'planned')
      throw new Error('not planned');
    expect(pounds.lifts[0].load.words).toMatch(/\slb on the stack$/);
  });

  it('only asks where somebody has to be asked first', () => {
    const health = { ...client.health, symptoms: ['chest-discomfort'] } as const;
    const asked = planSession({ client: { ...client, health }, gym, intent: intentOf(pulldown) });
    const text = printSheet(sessionSheet(asked));
    expect(text).toContain('ask first');
    expect(text).not.toContain('kg');
  });

  it('keeps what a limit took, in words, and what taking turns would save', () => {
    if (plan.kind !== 'session') throw new Error(plan.kind);
    const dropped = [
      { kind: 'work-set', lift: 0, step: 1, minutesSaved: 3, message: 'Set 2.' },
    ] as const;
    const limit = { minutesAtMost: 9, without: plan.minutes, dropped };
    const turns = { lifts: [[0, 1]], minutes: 8, message: 'By turns.' } as const;
    const of = (change: object) => sessionSheet({ ...plan, ...change });
    const expected = {
      minutesAtMost: 9,
      withoutMinutes: plan.minutes.total,
      dropped: [{ message: 'Set 2.', minutesSaved: 3 }],
    };
    expect(of({ limit })).toStrictEqual({ ...sheet, limit: expected });
    expect(of({ limit: { ...limit, turns } })).toStrictEqual({
      ...sheet,
      limit: { ...expected, turns: 'By turns.' },
    });
    const refused = [{ what: 'muscles', code: 'x', message: 'Nothing.' }] as const;
    expect(of({ refused })).toStrictEqual({ ...sheet, refused: ['Nothing.'] });
  });

  it('keeps when these muscles are ready, cautions and signs to stop', () => {
    if (plan.kind !== 'session' || !plan.next || sheet.kind !== 'sheet') throw new Error(plan.kind);
    const { earliest, likely, cautious } = plan.next;
    const times = { date: likely.date, earliest, likely, cautious, notes: [] };
    expect(sheet.next).toStrictEqual({ ...times, isFixed: false });
    const next = { ...plan.next, overruled: { chosen: '2027-03-20' } };
    const fixed = sessionSheet({ ...plan, next });
    expect(fixed.kind === 'sheet' && fixed.next?.isFixed).toBe(true);
    expect(sheet).toMatchObject({ client: plan.clientName, gym: plan.gymName, date: plan.date });
    expect(sheet.cautions).toStrictEqual(
      plan.cautions.map(({ level, what, why, instead, ask }) => ({
        level,
        what,
        why,
        instead,
        ask,
      })),
    );
    const [rule] = plan.stopRules;
    expect(sheet.stop[0]).toBe(`${rule?.sign}: ${rule?.action}`);
    const { next: _, ...done } = plan;
    expect(sessionSheet(done)).not.toHaveProperty('next');
  });

  it('only says that the time is short, or whom to ask', () => {
    const head = { clientName: 'Winch hand', date: '2027-03-15', cautions: [] };
    const minutes = { minutesAtMost: 2, leastMinutes: 4, message: 'Nothing fits.' };
    expect(sessionSheet({ kind: 'too-short', ...head, ...minutes })).toStrictEqual({
      kind: 'too-short',
      client: 'Winch hand',
      date: '2027-03-15',
      message: 'Nothing fits.',
      cautions: [],
    });
    const asked = { reasons: ['A sign.'], ask: ['physician'] } as const;
    expect(sessionSheet({ kind: 'ask-first', ...head, ...asked })).toStrictEqual({
      kind: 'ask-first',
      client: 'Winch hand',
      date: '2027-03-15',
      ...asked,
      cautions: [],
    });
  });
});
