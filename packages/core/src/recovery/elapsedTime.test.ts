import { describe, expect, it } from 'vitest';
import { elapsedTime } from './elapsedTime.ts';
import { wallTimeAfter } from './wallTimeAfter.ts';

describe('elapsedTime', () => {
  it('counts a session over midnight as 70 minutes', () => {
    const { hours, calendarDays } = elapsedTime(
      '2026-05-05T23:30',
      '2026-05-06T00:40',
      'Europe/Berlin',
    );
    expect(hours * 60).toBe(70);
    expect(calendarDays).toBe(1);
  });

  it('counts 47 h into summer time and 49 h out of it', () => {
    expect(elapsedTime('2026-03-28T10:00', '2026-03-30T10:00', 'Europe/Berlin').hours).toBe(47);
    expect(elapsedTime('2026-10-24T18:00', '2026-10-26T18:00', 'Europe/Berlin').hours).toBe(49);
  });

  it('refuses times and zones that do not exist', () => {
    expect(() => elapsedTime('2026-02-30T10:00', '2026-03-01T10:00', 'Europe/Berlin')).toThrow(
      RangeError,
    );
    expect(() => elapsedTime('2026-03-01T10:00', '2026-03-01T10:00', 'Berlin')).toThrow(RangeError);
  });
});

describe('wallTimeAfter', () => {
  it('gives 11:00 after 48 h into summer time, where two days would give 10:00', () => {
    expect(wallTimeAfter('2026-03-28T10:00', 48, 'Europe/Berlin')).toBe('2026-03-30T11:00');
  });

  it('goes back too, to the minute, and refuses hours that are no number', () => {
    expect(wallTimeAfter('2026-03-28T10:00', -0.5, 'UTC')).toBe('2026-03-28T09:30');
    const never = () => wallTimeAfter('2026-03-28T10:00', Number.NaN, 'UTC');
    expect(never).toThrow('wallTimeAfter: hours must be');
  });
});
