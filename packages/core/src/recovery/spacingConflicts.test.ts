import { describe, expect, it } from 'vitest';
import type { RotaSession } from './Calendar.ts';
import { spacingConflicts } from './spacingConflicts.ts';

const session = (id: string, ...muscles: string[]): RotaSession => ({
  id,
  name: id,
  minutes: 60,
  muscles: Object.fromEntries(muscles.map((muscle) => [muscle, 48])),
});
const rotation = [
  session('chest', 'chest', 'front-deltoid', 'triceps'),
  session('shoulders', 'front-deltoid', 'side-deltoid', 'triceps'),
  session('side-raises', 'side-deltoid', 'supraspinatus'),
];
const conflicts = (zone: string, ...sessions: (readonly [string, string])[]) =>
  spacingConflicts({
    zone,
    rotation,
    sessions: sessions.map(([id, start]) => ({ session: id, start })),
  });

describe('spacingConflicts', () => {
  it('finds chest on Monday and shoulders on Tuesday 24 h too early, by their shared muscles', () => {
    const [conflict, ...others] = conflicts(
      'Europe/Berlin',
      ['chest', '2026-03-02T18:00'],
      ['shoulders', '2026-03-03T18:00'],
    );
    expect(others).toEqual([]);
    expect(conflict?.gaps.map(({ muscle, hours }) => [muscle, hours])).toEqual([
      ['front-deltoid', 24],
      ['triceps', 24],
    ]);
    expect(conflict?.earliest).toBe('2026-03-04T18:00');
  });

  it('lets side raises stay on Tuesday', () => {
    const days = [
      ['chest', '2026-03-02T18:00'],
      ['side-raises', '2026-03-03T18:00'],
    ] as const;
    expect(conflicts('Europe/Berlin', ...days)).toEqual([]);
  });

  it('accepts a weekend of two sessions only for different muscles', () => {
    const [same, different] = ['chest', 'side-raises'].map((second) =>
      conflicts('Europe/Berlin', ['chest', '2026-03-07T10:00'], [second, '2026-03-08T10:00']),
    );
    expect(same).toHaveLength(1);
    expect(different).toHaveLength(0);
  });

  it('counts 47 and 49 h across the clock changes, not 48', () => {
    const pair = (a: string, b: string) => conflicts('Europe/Berlin', ['chest', a], ['chest', b]);
    expect(pair('2026-03-28T10:00', '2026-03-30T10:00')[0]?.gaps[0].hours).toBe(47);
    expect(pair('2026-03-28T10:00', '2026-03-30T10:00')[0]?.earliest).toBe('2026-03-30T11:00');
    expect(pair('2026-10-24T18:00', '2026-10-26T18:00')).toEqual([]);
  });

  it('refuses a session it knows nothing about', () => {
    expect(() => conflicts('Europe/Berlin', ['arms', '2026-03-02T18:00'])).toThrow(RangeError);
  });

  it('takes the sessions in any order, and in full unless they are said to be light', () => {
    const light = { minutes: 30, muscles: { chest: 20 } };
    const told = (first: boolean | undefined) =>
      spacingConflicts({
        zone: 'UTC',
        rotation: [{ ...session('chest', 'chest'), light }],
        sessions: [
          { session: 'chest', start: '2026-03-03T18:00' },
          {
            session: 'chest',
            start: '2026-03-02T18:00',
            ...(first !== undefined && { light: first }),
          },
        ],
      }).map(({ start }) => start);
    expect(told(undefined)).toEqual(['2026-03-03T18:00']);
    expect(told(false)).toEqual(['2026-03-03T18:00']);
    expect(told(true)).toEqual([]);
  });

  it('takes a session in full that is said to be light and has no light form', () => {
    const sessions = ['2026-03-02', '2026-03-03'].map((date) => ({
      session: 'chest',
      start: `${date}T18:00`,
      light: true,
    }));
    const rotation = [session('chest', 'chest')];
    const found = spacingConflicts({ zone: 'UTC', rotation, sessions });
    expect(found.map(({ start }) => start)).toEqual(['2026-03-03T18:00']);
  });

  it('finds none at the very hour', () => {
    const days = [
      ['chest', '2026-03-02T18:00'],
      ['chest', '2026-03-04T18:00'],
    ] as const;
    expect(conflicts('Europe/Berlin', ...days)).toEqual([]);
  });

  it('waits for the muscle that takes longest, and names the one that lacks most first', () => {
    const muscles = (chest: number, triceps: number) => [
      { id: 'a', name: 'A', minutes: 60, muscles: { triceps, chest } },
    ];
    const sessions = ['2026-03-02T18:00', '2026-03-03T18:00'].map((start) => ({
      session: 'a',
      start,
    }));
    const told = (chest: number, triceps: number) => {
      const rotation = muscles(chest, triceps);
      const [conflict] = spacingConflicts({ zone: 'UTC', rotation, sessions });
      return [conflict?.earliest, ...(conflict?.gaps.map(({ muscle }) => muscle) ?? [])];
    };
    expect(told(30, 40)).toEqual(['2026-03-04T10:00', 'triceps', 'chest']);
    expect(told(40, 30)).toEqual(['2026-03-04T10:00', 'chest', 'triceps']);
    expect(told(40, 40)).toEqual(['2026-03-04T10:00', 'chest', 'triceps']);
    expect(told(40, 24)).toEqual(['2026-03-04T10:00', 'chest']);
  });

  it('names the session that binds a muscle, the later of two that bind it alike', () => {
    const rotation = [
      { id: 'long', name: 'Long', minutes: 60, muscles: { lats: 60 } },
      { id: 'short', name: 'Short', minutes: 60, muscles: { lats: 36 } },
    ];
    // on the 4th: 48 h of 60 since the 2nd, 24 h of 36 since the 3rd: both 12 h short
    const sessions = [
      { session: 'long', start: '2026-03-02T18:00' },
      { session: 'short', start: '2026-03-03T18:00' },
      { session: 'short', start: '2026-03-04T18:00' },
    ];
    const told = spacingConflicts({ zone: 'UTC', rotation, sessions });
    expect(told.at(-1)?.gaps).toEqual([
      { muscle: 'lats', hours: 24, hoursNeeded: 36, lastTrained: '2026-03-03T18:00' },
    ]);
  });
});
