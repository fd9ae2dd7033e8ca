import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { timeZoneBlock } from './calendar/timeZoneBlock.ts';
import { instantOf, minutesOf, minutesOfInstant, wallOf } from './zonedTime.ts';

/** North and south, half and quarter hours, a change of 30 minutes, a skipped day, and no change. */
const zones = fc.constantFrom(
  'Europe/Berlin',
  'Europe/London',
  'America/New_York',
  'America/St_Johns',
  'America/Santiago',
  'Africa/Casablanca',
  'Asia/Kathmandu',
  'Asia/Tokyo',
  'Australia/Lord_Howe',
  'Pacific/Auckland',
  'Pacific/Apia',
  'UTC',
);
const moments = fc.integer({ min: Date.UTC(2000) / 60_000, max: Date.UTC(2037) / 60_000 });
/** Moments near clock changes, which hardly any random minute hits. */
const nearChanges = fc
  .tuple(moments, zones, fc.integer({ min: -240, max: 240 }))
  .map(([from, zone, off]) => {
    const change = Temporal.Instant.fromEpochMilliseconds(from * 60_000)
      .toZonedDateTimeISO(zone)
      .getTimeZoneTransition('next');
    return { zone, minutes: (change?.epochMilliseconds ?? from * 60_000) / 60_000 + off };
  });

/** The oracle is an implementation of the Temporal standard by other people. */
describe('zoned time', () => {
  it('reads the wall clock of a moment as Temporal does', () => {
    fc.assert(
      fc.property(nearChanges, ({ zone, minutes }) => {
        const instant = Temporal.Instant.fromEpochMilliseconds(minutes * 60_000);
        const wall = instant.toZonedDateTimeISO(zone).toPlainDateTime();
        expect(wallOf(minutes, zone)).toBe(wall.toString({ smallestUnit: 'minute' }));
        expect(instantOf(minutes)).toBe(instant.toString());
        expect(minutesOfInstant(instant.toString())).toBe(minutes);
      }),
    );
  });

  it('finds the moment of a wall clock as Temporal does, skipped and doubled hours too', () => {
    fc.assert(
      fc.property(nearChanges, fc.integer({ min: -180, max: 180 }), ({ zone, minutes }, off) => {
        const wall = wallOf(minutes, zone);
        const shifted = Temporal.PlainDateTime.from(wall).add({ minutes: off });
        const text = shifted.toString({ smallestUnit: 'minute' });
        const expected = shifted.toZonedDateTime(zone).epochMilliseconds / 60_000;
        expect(minutesOf(text, zone)).toBe(expected);
      }),
    );
  });

  it('writes the clock changes of a stretch as Temporal knows them', () => {
    fc.assert(
      fc.property(moments, zones, fc.integer({ min: 1, max: 400 }), (from, zone, days) => {
        const last = instantOf(from + 1440 * days);
        const block = timeZoneBlock(zone, instantOf(from), last);
        const end = Temporal.Instant.from(last).epochMilliseconds;
        const changes: string[] = [];
        let at = Temporal.Instant.from(instantOf(from)).toZonedDateTimeISO(zone);
        for (;;) {
          const next = at.getTimeZoneTransition('next');
          if (next === null || next.epochMilliseconds > end) break;
          changes.push(next.offset.replace(':', ''));
          at = next;
        }
        const written = [...block.matchAll(/TZOFFSETTO:([+-]\d{4})/g)].map(([, to]) => to);
        expect(written.slice(1)).toEqual(changes);
        expect(written[0]).toBe(
          Temporal.Instant.from(instantOf(from)).toZonedDateTimeISO(zone).offset.replace(':', ''),
        );
      }),
    );
  });
});
