import { expect, it } from 'vitest';
import { zoneField } from './zoneField.ts';

/** The offsets of a zone at the middle and the turn of every month of a year. */
function clockOf(zone: string): string {
  const clock = new Intl.DateTimeFormat('en', { timeZone: zone, timeZoneName: 'longOffset' });
  return Array.from({ length: 24 }, (_, half) => {
    const parts = clock.formatToParts(Date.UTC(2026, 0, 1 + 15 * half));
    return parts.find(({ type }) => type === 'timeZoneName')?.value ?? '';
  }).join();
}

it('has a zone for every clock that the platform knows', () => {
  const offered = new Set(zoneField.options.map(({ id }) => clockOf(id)));
  const missing = Intl.supportedValuesOf('timeZone').filter((zone) => !offered.has(clockOf(zone)));
  expect(missing).toEqual([]);
});
