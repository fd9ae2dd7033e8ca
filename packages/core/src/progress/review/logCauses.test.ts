import { describe, expect, it } from 'vitest';
import { sessionOn } from '../gym.testing.ts';
import type { LiftSession, SessionSet } from '../LiftSession.ts';
import { type CauseQuestion, logCauses } from './logCauses.ts';
import type { StallCauseId } from './StallCause.ts';

const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const date = (day: number) => new Date(Date.UTC(2026, 0, 1 + day)).toISOString().slice(0, 10);
const on = (day: number, more: Partial<SessionSet> = {}, sets = 2, load = 60) =>
  sessionOn(
    date(day),
    kilos(load),
    Array.from({ length: sets }, () => 5),
    more,
  );
const find = (
  id: StallCauseId,
  sessions: readonly LiftSession[],
  more: Partial<CauseQuestion> = {},
) => logCauses.find((cause) => cause.id === id)?.find({ sessions, ...more });
const standing = (...question: Parameters<typeof find>) => find(...question)?.standing;

describe('too soon', () => {
  it('is shown when fewer hours lay between two of the last four sessions than are needed', () => {
    const sessions = [0, 4, 6, 9].map((day) => on(day));
    expect(standing('too-soon', sessions, { hoursNeeded: 49 })).toBe('in-the-log');
    expect(find('too-soon', sessions, { hoursNeeded: 60.4 })?.says).toMatch(/ 48 hours.* 60\.$/);
    expect(standing('too-soon', sessions, { hoursNeeded: 48 })).toBe('not-in-the-log');
  });

  it('looks at no gap before the last four, and says nothing without a gap or hours', () => {
    const sessions = [0, 1, 5, 9, 13].map((day) => on(day));
    expect(standing('too-soon', sessions, { hoursNeeded: 90 })).toBe('not-in-the-log');
    expect(find('too-soon', sessions)).toBeUndefined();
    expect(find('too-soon', [on(0)], { hoursNeeded: 48 })).toBeUndefined();
  });
});

describe('a large step', () => {
  const steps = (...loads: readonly number[]) => loads.map((load, i) => on(3 * i, {}, 2, load));

  it('is more than a tenth up from the last lighter load', () => {
    expect(standing('large-step', steps(50, 55))).toBe('not-in-the-log');
    expect(standing('large-step', steps(50, 55.5, 55.5))).toBe('in-the-log');
    expect(find('large-step', steps(40, 60, 60))?.says).toContain('50 %');
    expect(find('large-step', steps(40, 58, 60, 60))?.says).toContain('3 %');
  });

  it('is nothing where the load never rose', () => {
    expect(find('large-step', steps(60, 60))).toBeUndefined();
    expect(find('large-step', steps(60, 50))).toBeUndefined();
    expect(find('large-step', [])).toBeUndefined();
  });
});

describe('shorter rests', () => {
  const rests = (...seconds: readonly (number | undefined)[]) =>
    seconds.map((restSeconds, i) => on(3 * i, restSeconds === undefined ? {} : { restSeconds }));

  it('are under three quarters of those before the last three sessions', () => {
    expect(standing('shorter-rests', rests(120, 90, 90, 90))).toBe('not-in-the-log');
    expect(standing('shorter-rests', rests(120, 89, 90, 90))).toBe('in-the-log');
    // means: (100 + 140) / 2 before, (60 + 70 + 83) / 3 now
    expect(find('shorter-rests', rests(100, 140, 60, 70, 83))?.says).toMatch(/ 120 to 71 /);
  });

  it('need a note in both, before any set but the first', () => {
    expect(find('shorter-rests', rests(90, 90, 90))).toBeUndefined();
    expect(find('shorter-rests', rests(undefined, 90, 90, 90))).toBeUndefined();
    expect(find('shorter-rests', rests(120, undefined, undefined, undefined))).toBeUndefined();
    expect(standing('shorter-rests', rests(120, undefined, 80, undefined))).toBe('in-the-log');
    const single = [0, 3, 6, 9].map((day) => on(day, { restSeconds: 60 }, 1));
    expect(find('shorter-rests', single)).toBeUndefined();
  });

  it('go by the shortest of a session', () => {
    const session = on(0);
    const [first, ...more] = [10, 200, 100].map((restSeconds) => ({
      ...session.sets[0],
      restSeconds,
    }));
    const before = first ? { ...session, sets: [first, ...more] as const } : session;
    expect(standing('shorter-rests', [before, ...rests(75, 75, 75)])).toBe('not-in-the-log');
    expect(standing('shorter-rests', [before, ...rests(74, 74, 74)])).toBe('in-the-log');
  });
});

describe('another tempo', () => {
  const tempos = (...list: readonly (string | undefined)[]) =>
    list.map((tempo, i) => on(3 * i, tempo === undefined ? {} : { tempo }));

  it('is shown when any session had one that the last one has not', () => {
    expect(standing('other-tempo', tempos('3010', '4010', '4010'))).toBe('in-the-log');
    expect(find('other-tempo', tempos('3010', '4010'))?.says).toContain('4010');
    expect(find('other-tempo', tempos('4010', '4010', '3010'))?.says).toContain('3010 now');
    expect(standing('other-tempo', tempos('4010', undefined, '4010'))).toBe('not-in-the-log');
  });

  it('needs two sessions with a note', () => {
    expect(find('other-tempo', tempos('4010', undefined))).toBeUndefined();
  });
});

describe('a change of work', () => {
  const counts = (...list: readonly number[]) => list.map((sets, i) => on(3 * i, {}, sets));

  it('is one set a session or more, up or down', () => {
    expect(standing('work-changed', counts(3, 3, 4, 4, 4))).toBe('in-the-log');
    expect(standing('work-changed', counts(4, 4, 3, 3, 3))).toBe('in-the-log');
    expect(standing('work-changed', counts(3, 3, 4, 4, 3))).toBe('not-in-the-log');
    expect(find('work-changed', counts(2, 3, 4, 4, 5))?.says).toMatch(/ 2\.5 to 4\.3\.$/);
  });

  it('needs sessions before the last three', () => {
    expect(find('work-changed', counts(3, 4, 5))).toBeUndefined();
  });
});
