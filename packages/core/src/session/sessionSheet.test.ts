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
    expect(pull.count).toBe('lift 2 s, lower 4 s');
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
});
