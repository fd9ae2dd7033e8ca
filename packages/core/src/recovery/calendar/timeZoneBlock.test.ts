import { describe, expect, it } from 'vitest';
import { timeZoneBlock } from './timeZoneBlock.ts';

const lines = (zone: string, first: string, last = first) =>
  timeZoneBlock(zone, first, last).split('\r\n').slice(2, -2);
/** Berlin went back to 1 hour on 26 October 2025 at 3:00, and ahead to 2 on 29 March 2026 at 2:00. */
const winter = [
  'BEGIN:STANDARD',
  'DTSTART:20251026T030000',
  'TZOFFSETFROM:+0200',
  'TZOFFSETTO:+0100',
  'END:STANDARD',
];
const summer = [
  'BEGIN:DAYLIGHT',
  'DTSTART:20260329T020000',
  'TZOFFSETFROM:+0100',
  'TZOFFSETTO:+0200',
  'END:DAYLIGHT',
];

describe('timeZoneBlock', () => {
  it('writes the offset in force and the changes up to the last moment, that one included', () => {
    const from = '2026-03-01T12:00:00Z';
    expect(lines('Europe/Berlin', from, '2026-03-29T00:59:00Z')).toEqual(winter);
    expect(lines('Europe/Berlin', from, '2026-03-29T01:00:00Z')).toEqual([...winter, ...summer]);
  });

  it('begins with a change at the very first moment', () => {
    expect(lines('Europe/Berlin', '2026-03-29T01:00:00Z')).toEqual(summer);
    expect(lines('Europe/Berlin', '2026-03-29T00:59:00Z')).toEqual(winter);
  });

  it('writes the one offset of a zone without changes, from 1970 on', () => {
    expect(lines('Asia/Kathmandu', '2026-03-29T01:00:00Z')).toEqual([
      'BEGIN:STANDARD',
      'DTSTART:19700101T000000',
      'TZOFFSETFROM:+0545',
      'TZOFFSETTO:+0545',
      'END:STANDARD',
    ]);
    expect(lines('America/Bogota', '2026-03-29T01:00:00Z')).toContain('TZOFFSETTO:-0500');
  });

  it('is a component with its name', () => {
    const text = timeZoneBlock('UTC', '2026-03-29T01:00:00Z', '2026-03-29T01:00:00Z');
    expect(text.startsWith('BEGIN:VTIMEZONE\r\nTZID:UTC\r\n')).toBe(true);
    expect(text.endsWith('END:VTIMEZONE\r\n')).toBe(true);
  });
});
