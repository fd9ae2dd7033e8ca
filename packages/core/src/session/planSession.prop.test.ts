import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exercises } from '../anatomy/index.ts';
import { client, gym, pulldown } from './boathouse.testing.ts';
import { casesTimes } from './cases.testing.ts';
import { planSession } from './planSession.ts';
import { sessionSheet } from './sessionSheet.ts';

const seconds = fc.integer({ min: 1, max: 10 });
const tempo = fc.record({
  lowerSeconds: seconds,
  pauseAfterLowerSeconds: fc.constantFrom(0, 1, 2),
  liftSeconds: fc.oneof(seconds, fc.constant('X' as const)),
  pauseAfterLiftSeconds: fc.constantFrom(0, 1),
});
const pairs = exercises.flatMap((exercise) =>
  gym.equipment.map((equipment) => ({ exercise: exercise.id, equipment: equipment.id })),
);
const stage = fc.constantFrom(
  { kind: 'hold', at: 'middle', maxSeconds: 20 } as const,
  { kind: 'lower', secondsEach: 5, maxLowerings: 3 } as const,
  { kind: 'lighter', loadShare: 0.8 } as const,
  { kind: 'pause', seconds: 15 } as const,
  { kind: 'assisted', reps: 1 } as const,
  { kind: 'part-range', maxReps: 4 } as const,
);
const kilograms = fc
  .integer({ min: -10, max: 120 })
  .map((value) => ({ value, unit: 'kg' as const }));
const overrules = fc.record(
  {
    variant: fc.constantFrom('usual', 'neutral-grip', 'upside-down'),
    load: kilograms,
    sets: fc.integer({ min: 0, max: 5 }),
    restSeconds: fc.integer({ min: -10, max: 400 }),
    warmUp: fc.array(fc.record({ load: kilograms, reps: fc.integer({ min: 0, max: 12 }) }), {
      maxLength: 3,
    }),
  },
  { requiredKeys: [] },
);
const wishes = fc.record(
  {
    overrules,
    join: fc.record({
      kind: fc.constantFrom('pair' as const, 'in-turn' as const),
      transitionSeconds: fc.integer({ min: 0, max: 120 }),
    }),
    chain: fc.record({
      stages: fc.array(stage, { minLength: 1, maxLength: 3 }),
      stops: fc.boolean(),
      switchedOn: fc.boolean(),
    }),
  },
  { requiredKeys: [] },
);
const lift = fc
  .record({
    wishes,
    pair: fc.constantFrom(...pairs),
    fewest: fc.integer({ min: 1, max: 30 }),
    width: fc.integer({ min: 0, max: 10 }),
    tempo,
    sets: fc.integer({ min: 1, max: 4 }),
    restSeconds: fc.integer({ min: 0, max: 300 }),
  })
  .map(({ wishes: wanted, pair, fewest, width, ...rest }) => ({
    ...wanted,
    ...pair,
    ...rest,
    window: { minReps: fewest, maxReps: fewest + width },
  }));
const set = fc
  .record({
    pair: fc.constantFrom(...pairs),
    value: fc.integer({ min: 0, max: 200 }),
    reps: fc.integer({ min: 0, max: 60 }),
    end: fc.constantFrom(
      { kind: 'failure' as const },
      { kind: 'reserve' as const, repsLeft: 2 },
      { kind: 'more' as const, atLeast: 1 },
    ),
    date: fc.constantFrom('2026-03-01', '2027-03-08', '2027-03-14', '2028-01-01'),
  })
  .map(({ pair, value, ...rest }) => ({ ...pair, ...rest, load: { value, unit: 'kg' as const } }));

describe('planSession', () => {
  it('answers whatever is asked, without a number that is none', () => {
    fc.assert(
      fc.property(
        fc.array(lift, { minLength: 1, maxLength: 4 }),
        fc.array(set, { maxLength: 6 }),
        fc.integer({ min: 0, max: 600 }),
        fc.option(fc.integer({ min: 1, max: 60 })),
        (lifts, sets, changeSeconds, minutesAtMost) => {
          const known = {
            ...client,
            sets: [...sets.filter((one) => one.reps > 0 || one.end.kind === 'failure')],
          };
          const intent = {
            date: '2027-03-15',
            unit: 'kg',
            lifts,
            changeSeconds,
            ...(minutesAtMost !== null && { minutesAtMost }),
          } as const;
          const plan = planSession({ client: known, gym, intent });
          const sheet = JSON.stringify(sessionSheet(plan));
          expect(sheet).not.toMatch(/NaN|null|undefined|Infinity/);
          if (plan.kind !== 'session') return;
          expect(plan.lifts).toHaveLength(lifts.length);
          let clock = 0;
          for (const { startSeconds, seconds: length } of plan.timeline) {
            expect(startSeconds).toBeCloseTo(clock, 6);
            expect(length).toBeGreaterThanOrEqual(0);
            clock += length;
          }
        },
      ),
      casesTimes(0.6),
    );
  });

  it('gives the same plan for the same question', () => {
    const intent = {
      date: '2027-03-15',
      unit: 'kg',
      lifts: [pulldown],
      changeSeconds: 60,
    } as const;
    const once = planSession({ client, gym, intent });
    expect(planSession({ client, gym, intent })).toEqual(once);
  });
});
