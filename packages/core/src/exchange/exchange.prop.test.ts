import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Exercise, exercises, jointsLoaded, stationStandIns } from '../anatomy/index.ts';
import { type ClientHealth, limitsFor } from '../safety/index.ts';
import type { ExchangeSetting, Suggestion } from './Exchange.ts';
import { exchangeFor } from './exchangeFor.ts';
import { exercisesFor } from './exercisesFor.ts';
import { fullGym } from './fullGym.ts';

const complaintKinds = [
  'shoulder-front-bottom-of-press',
  'shoulder-raising-the-arm',
  'elbow-outer',
  'elbow-back-or-inner',
  'wrist',
  'low-back',
  'hip-front-deep-bend',
  'knee-front',
] as const;
/** Words with the movements that they name, for an independent check. */
const listed = {
  squats: 'squat',
  deadlift: 'hip-hinge',
  shrug: 'shrug',
  dips: 'dip',
  'seated overhead press': 'vertical-press',
  'leg press': 'leg-press',
} as const;

const client: fc.Arbitrary<ClientHealth> = fc.record({
  complaints: fc
    .subarray([...complaintKinds], { maxLength: 3 })
    .map((kinds) => kinds.map((kind) => ({ kind, redFlags: [] }))),
  pregnancy: fc.constantFrom('no' as const, 'pregnant' as const),
  clinician: fc.record({
    by: fc.constant('physician' as const),
    notAllowed: fc.subarray(Object.keys(listed), { maxLength: 3 }),
    handsOutOfUse: fc.subarray(['left', 'right'] as const),
  }),
});
const setting = client.chain((person) =>
  fc.record({
    limits: fc.constant(limitsFor(person)),
    atHand: fc.record({
      loads: fc.subarray([...fullGym.loads]),
      fixedForms: fc.subarray(['dumbbell', 'kettlebell', 'barbell'] as const),
      stations: fc.subarray([...fullGym.stations]),
    }),
    alone: fc.boolean(),
    stops: fc.boolean(),
    toFailure: fc.boolean(),
    most: fc.integer({ min: 1, max: 40 }),
  }),
);
const exercise = fc.constantFrom(...exercises);

/** Written apart from the code under test: what a suggestion must never be. */
function expectWithin({ exercise: offered }: Suggestion, wanted: ExchangeSetting): void {
  const { limits, atHand, alone, stops, toFailure } = wanted;
  for (const { position, level } of limits.positions) {
    if (level === 'avoid') expect(offered.positions).not.toContain(position);
  }
  for (const { joint } of limits.joints) expect(jointsLoaded(offered)).not.toContain(joint);
  for (const { support } of limits.supports) expect(offered.support).not.toBe(support);
  for (const words of limits.notAllowed) {
    expect(offered.movement).not.toBe(listed[words as keyof typeof listed]);
  }
  expect(offered.hands).toBeLessThanOrEqual(2 - limits.handsOutOfUse.length);
  const there = [
    ...atHand.stations,
    ...atHand.stations.flatMap((station) => stationStandIns[station] ?? []),
  ];
  for (const station of offered.stations) expect(there).toContain(station);
  expect(offered.loads.some((load) => load === 'body' || atHand.loads.includes(load))).toBe(true);
  if (!alone || !toFailure) return;
  expect(offered.atFailureAlone).not.toBe('needs-partner');
  if (!stops) expect(offered.atFailureAlone).toBe('leave');
}

describe('laws of the exchange', () => {
  it('no suggestion passes a hard filter, in any set-up', () => {
    fc.assert(
      fc.property(exercise, setting, (wanted, given) => {
        const exchange = exchangeFor(wanted, given);
        if (exchange.kind !== 'options') return;
        for (const one of [...exchange.setUps, ...exchange.others]) expectWithin(one, given);
      }),
    );
  });

  it('nor does one for an area', () => {
    fc.assert(
      fc.property(fc.constantFrom('legs', 'back', 'chest', 'trunk'), setting, (area, given) => {
        const found = exercisesFor(area, given);
        if (found.kind !== 'options') return;
        for (const one of found.suggestions) expectWithin(one, given);
      }),
    );
  });

  it('the exercise itself comes back only as a set-up that differs, and only when it cannot stay', () => {
    fc.assert(
      fc.property(exercise, setting, (wanted, given) => {
        const exchange = exchangeFor(wanted, given);
        if (exchange.kind !== 'options') return;
        const others = exchange.others.map(({ exercise: { id } }) => id);
        expect(others).not.toContain(wanted.id);
        expect(others).toEqual([...new Set(others)]);
        for (const one of exchange.setUps) {
          expect(one.exercise.id).toBe(wanted.id);
          expect(one.setUps.length).toBeGreaterThan(0);
        }
        if (!exchange.against.length) expect(exchange.setUps).toEqual([]);
      }),
    );
  });

  it('the order does not depend on the order of the list, and scores never rise down it', () => {
    fc.assert(
      fc.property(exercise, setting, fc.nat(), (wanted, given, turn) => {
        const at = turn % exercises.length;
        const turned: readonly Exercise[] = [...exercises.slice(at), ...exercises.slice(0, at)];
        const one = exchangeFor(wanted, given);
        const other = exchangeFor(wanted, { ...given, exercises: turned });
        expect(other.kind).toBe(one.kind);
        if (one.kind !== 'options' || other.kind !== 'options') return;
        expect(other.others).toEqual(one.others);
        const scores = one.others.map(({ score }) => score);
        for (const [i, score] of scores.entries()) {
          // Scores are compared at 1e-9: sums of shares in another order differ in the last bits.
          expect(score).toBeLessThanOrEqual((scores[i - 1] ?? score) + 1e-8);
        }
      }),
    );
  });

  it('more limits never bring an exercise in that fewer kept out', () => {
    fc.assert(
      fc.property(exercise, setting, fc.constantFrom(...complaintKinds), (wanted, given, kind) => {
        const most = exercises.length;
        const more = limitsFor({ complaints: [{ kind, redFlags: [] }] }).positions;
        const known = given.limits.positions.map(({ position }) => position);
        const added = more.filter(({ position }) => !known.includes(position));
        const stricter = { ...given.limits, positions: [...given.limits.positions, ...added] };
        const before = exchangeFor(wanted, { ...given, most });
        const after = exchangeFor(wanted, { ...given, limits: stricter, most });
        if (after.kind !== 'options' || before.kind !== 'options') return;
        const allowed = new Set(before.others.map(({ exercise: { id } }) => id));
        for (const {
          exercise: { id },
          setUps,
        } of after.others) {
          // A set-up that moves work can reach the least overlap where the plain exercise did not.
          if (!setUps.some((variant) => variant.direct)) expect(allowed).toContain(id);
        }
      }),
    );
  });
});
