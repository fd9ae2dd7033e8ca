import { toKg } from '@windlass/core/load';
import { describe, expect, it } from 'vitest';
import { firstExample } from '../../planner/state/examples.ts';
import type { FloorEvent, FloorHappening } from '../run/FloorEvent.ts';
import { foldEvents } from '../run/foldEvents.ts';
import { openPlan } from '../session/openPlan.ts';
import { sessionResult } from './sessionResult.ts';

const opened = openPlan(firstExample);
if (opened.kind === 'wrong') throw new Error(opened.message);
const { session, planned } = opened;

const set = (reps: number): readonly FloorHappening[] => [
  { kind: 'begun', leadInSeconds: 0, counted: false },
  ...Array.from({ length: reps }, () => ({ kind: 'rep', by: 'hand' }) as const),
  { kind: 'failed' },
];

function resultOf(...what: readonly FloorHappening[]) {
  const events = what.map((one, at): FloorEvent => ({ ...one, at: at * 10_000 }));
  return sessionResult(planned, session, foldEvents(session, events), '2027-03-15');
}
const toRow = { kind: 'gone-to', step: 3 } as const;

describe('sessionResult', () => {
  it('keeps the load while the sets end inside the window', () => {
    const [row, pulldown] = resultOf(toRow, ...set(9), ...set(8)).next;
    // The window is 8 to 11: a repetition more than the weakest set, with the same 55.4 kg.
    expect(row).toMatchObject({ kind: 'repeat', because: 'inside-the-window', aim: 9 });
    expect(row?.kind === 'repeat' && toKg(row.load.shown)).toBe(55.4);
    expect(pulldown).toBeNull();
  });

  it('raises it when every set is well above the window', () => {
    const [row] = resultOf(toRow, ...set(14), ...set(13)).next;
    expect(row?.kind).toMatch(/raise|reps-first/);
  });

  it('advises nothing but whom to ask after pain', () => {
    const pain = { kind: 'sign', rule: 'sharp-or-radiating-pain', ends: 'the-exercise' } as const;
    const [row] = resultOf(toRow, ...set(9), pain).next;
    expect(row?.kind).toBe('stop');
  });

  it('has the next day after the day of the session, the careful one not before the likely one', () => {
    const { date, nextDay } = resultOf(toRow, ...set(9), ...set(8));
    expect(date).toBe('2027-03-15');
    expect(nextDay && nextDay.likely > date && nextDay.cautious >= nextDay.likely).toBe(true);
  });

  it('of a session in which nothing was done is empty', () => {
    const { sets, next, nextDay } = resultOf();
    expect([sets, next, nextDay]).toEqual([[], [null, null, null], null]);
  });
});
