import { describe, expect, it } from 'vitest';
import { minutesOf, minutesOfInstant } from './zonedTime.ts';

describe('minutesOf', () => {
  it('takes times from 00:00 to 23:59', () => {
    expect(minutesOf('1970-01-02T00:00', 'UTC')).toBe(1440);
    expect(minutesOf('1970-01-01T23:59', 'UTC')).toBe(1439);
    expect(minutesOf('1970-01-01T19:09', 'UTC')).toBe(19 * 60 + 9);
  });

  it('moves an hour that is skipped on, and takes the first of an hour that comes twice', () => {
    // Berlin: 2:30 is 3:30 in summer time, 1:30 in the world; in autumn the first 2:30 is 0:30
    const at = (wall: string) => minutesOf(wall, 'Europe/Berlin');
    expect(at('2026-03-29T02:30')).toBe(minutesOfInstant('2026-03-29T01:30:00Z'));
    expect(at('2026-10-25T02:30')).toBe(minutesOfInstant('2026-10-25T00:30:00Z'));
  });

  it('refuses what is no wall time, alone and in full', () => {
    for (const wall of [
      '2026-03-02T24:00',
      '2026-03-02T18:60',
      '2026-03-02T8:00',
      '2026-03-02T18:0',
      '2026-03-02T18:000',
      '2026-03-02T18:00Z',
      '2026-03-02 18:00',
      '2026-03-02',
      '',
    ]) {
      expect(() => minutesOf(wall, 'UTC')).toThrow('wall time must be YYYY-MM-DDTHH:MM');
    }
    expect(() => minutesOf(' 2026-03-02T18:00', 'UTC')).toThrow(RangeError);
  });
});

describe('minutesOfInstant', () => {
  it('takes world time and offsets from it', () => {
    expect(minutesOfInstant('1970-01-01T02:00:00Z')).toBe(120);
    expect(minutesOfInstant('1970-01-01T02:00:00+01:30')).toBe(30);
    expect(minutesOfInstant('1970-01-01T02:00:00-01:30')).toBe(210);
  });

  it('refuses a time without a zone, which would be read by the clock of the machine', () => {
    for (const instant of [
      '2026-03-30T16:00:00',
      '2026-03-30T16:00',
      '2026-03-30',
      '30 Mar 2026 Z 16:00',
      'Z',
    ]) {
      expect(() => minutesOfInstant(instant)).toThrow('moment must be like 2026-03-30T16:00:00Z');
    }
  });
});
