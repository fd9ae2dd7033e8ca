import { describe, expect, it } from 'vitest';
import { type BodyStation, reachableLoads } from '../equipment/index.ts';
import { lb, toKg } from '../load/index.ts';
import { enduranceCurves } from '../strength/index.ts';
import type { LoggedSet } from './LoggedSet.ts';
import { liftSessions } from './liftSessions.ts';
import { nextLoad } from './nextLoad.ts';
import { strengthMeasure } from './review/strengthMeasure.ts';

const chins = (date: string, body: LoggedSet['load'], added: number, reps: number): LoggedSet => ({
  date,
  exercise: 'chin-up',
  set: 1,
  load: { value: added, unit: body.unit },
  counts: 'added',
  bodyWeight: body,
  reps,
});
const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const pounds = (value: number) => ({ value, unit: 'lb' }) as const;

describe('a log where the body is the load', () => {
  it('takes help off the body: less help is more load', () => {
    const log = [chins('2026-03-02', kilos(82), -35, 10), chins('2026-03-05', kilos(82), -30, 10)];
    const { sessions } = liftSessions(log, 'chin-up');
    expect(sessions.map(({ sets }) => toKg(sets[0].load))).toEqual([47, 52]);
  });

  it('refuses help as large as the body, and says so', () => {
    const { sessions, leftOut } = liftSessions([chins('2026-03-02', kilos(90), -95, 5)], 'chin-up');
    expect(sessions).toEqual([]);
    expect(leftOut[0]?.reason).toBe('nothing-moved');
  });

  it('does not take 15 at 175 lb and 9 at 193 lb for a loss of 40 %', () => {
    const log = [chins('2025-03-02', pounds(175), 0, 15), chins('2026-03-02', pounds(193), 0, 9)];
    const { sessions } = liftSessions(log, 'chin-up');
    const [before = 0, after = 0] = sessions.map(
      ({ sets }) => strengthMeasure(sets[0], enduranceCurves.pull).lnMax,
    );
    // published equations span -14 to +5 %
    const percent = 100 * (Math.exp(after - before) - 1);
    expect(percent).toBeGreaterThan(-14);
    expect(percent).toBeLessThan(5);
    expect(sessions[1]?.sets[0].load).toBe(lb(193));
  });

  it('keeps the belt when the body weight moved a little, and steps from there', () => {
    const station: BodyStation = {
      kind: 'body',
      id: 'bar',
      name: 'Chin-up bar',
      belt: { pieces: [2.5, 5, 5, 10].map((value) => ({ weight: kilos(value), pieces: 1 })) },
    };
    const loads = reachableLoads(station, { bodyWeight: kilos(81) });
    const log = [chins('2026-03-02', kilos(80), 10, 8), chins('2026-03-05', kilos(80.6), 10, 8)];
    const question = {
      sessions: liftSessions(log, 'chin-up').sessions,
      equipment: station,
      loads,
      on: '2026-03-09',
    };
    const repeat = nextLoad({ ...question, window: { minReps: 6, maxReps: 10 } });
    expect(repeat.kind === 'repeat' && toKg(repeat.load.shown)).toBe(10);
    const raise = nextLoad({ ...question, window: { minReps: 5, maxReps: 8 } });
    if (raise.kind !== 'raise') throw new Error(raise.kind);
    expect(toKg(raise.load.shown)).toBe(12.5);
    // 2.5 kg on 81 + 10
    expect(raise.percent).toBeCloseTo(100 * (2.5 / 91), 9);
  });
});
