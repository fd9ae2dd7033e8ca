import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FloorStep } from '../session/FloorSession.ts';
import { effectiveEvents } from './effectiveEvents.ts';
import type { FloorEvent } from './FloorEvent.ts';
import { foldEvents } from './foldEvents.ts';

const chain = {
  plan: {
    exerciseId: 'cable-pulldown',
    load: { value: 50, unit: 'kg' },
    stages: [{ kind: 'lift' }, { kind: 'hold', at: 'middle', maxSeconds: 10 }],
    secondsPerRep: 6,
    maxSeconds: 180,
  },
  needs: [],
} as const;
const steps: readonly FloorStep[] = [0, 0, 1, 1].map((lift, place) => ({
  lift,
  kind: place === 0 ? 'warm-up' : 'work',
  number: 1,
  of: 2,
  load: null,
  reps: 8,
  restSeconds: place * 60,
  ...(place > 1 && { chain }),
}));
const session = { steps } as const;

const at = fc.nat(100_000);
const step = fc.nat(5);
const end = fc.constantFrom(
  undefined,
  { kind: 'failure' } as const,
  { kind: 'reserve', repsLeft: 2 } as const,
);
const rule = fc.constant('rising-pain');
const anyEvent: fc.Arbitrary<FloorEvent> = fc.oneof(
  fc.record({
    kind: fc.constant('begun' as const),
    at,
    leadInSeconds: fc.nat(10),
    counted: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('rep' as const),
    at,
    by: fc.constantFrom('count' as const, 'hand' as const),
  }),
  fc.record({
    kind: fc.constantFrom(
      'rep-less',
      'held',
      'failed',
      'stopped',
      'done',
      'rest-over',
      'undone',
      'redone',
    ),
    at,
  }),
  fc.record({ kind: fc.constant('counted-on' as const), at, leadInSeconds: fc.nat(10) }),
  end.chain((told) =>
    fc.record({ kind: fc.constant('told' as const), at, ...(told && { end: fc.constant(told) }) }),
  ),
  fc.record({
    kind: fc.constant('put-right' as const),
    at,
    step,
    reps: fc.integer({ min: -3, max: 300 }),
  }),
  fc.record({
    kind: fc.constant('live' as const),
    at,
    event: fc.constantFrom(
      { kind: 'hold-begun', atSeconds: 50 } as const,
      { kind: 'hold-ended', atSeconds: 60 } as const,
    ),
  }),
  fc.record({
    kind: fc.constant('live-over' as const),
    at,
    record: fc.constant({ reps: 3, note: '' }),
  }),
  fc.record({ kind: fc.constant('gone-to' as const), at, step }),
  fc.record({
    kind: fc.constant('left-out' as const),
    at,
    steps: fc.array(step, { maxLength: 4 }),
  }),
  fc.record({
    kind: fc.constant('rest-changed' as const),
    at,
    seconds: fc.integer({ min: -500, max: 500 }),
  }),
  fc.record({
    kind: fc.constant('sign' as const),
    at,
    rule,
    ends: fc.constantFrom('the-set' as const, 'the-exercise' as const, 'the-session' as const),
  }),
);
const anyLog = fc.array(anyEvent, { maxLength: 40 });

describe('any log', () => {
  it('leaves a state that can be gone on from', () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        const state = foldEvents(session, log);
        expect(state.running !== null).toBe(
          state.phase === 'lifting' || state.phase === 'past-failure',
        );
        if (state.phase === 'ready') {
          expect(steps[state.step]).toBeDefined();
          expect(state.leftOut.has(state.step)).toBe(false);
        }
        if (state.phase === 'asking') expect(state.done.has(state.step)).toBe(true);
        if (state.phase === 'over') expect(state.rest).toBeNull();
        expect(state.running?.reps ?? 0).toBeGreaterThanOrEqual(0);
        expect(state.rest?.seconds ?? 0).toBeGreaterThanOrEqual(0);
        for (const [place, { reps, step: own }] of state.done) {
          expect(own).toBe(place);
          expect(reps >= 0 && reps <= 200).toBe(true);
        }
      }),
    );
  });

  it('gives the same state after it was kept as text and read again', () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        expect(foldEvents(session, JSON.parse(JSON.stringify(log)))).toEqual(
          foldEvents(session, log),
        );
      }),
    );
  });

  it('is as it was after something was taken back and brought back', () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        const back: FloorEvent[] = [...log, { kind: 'undone', at: 0 }, { kind: 'redone', at: 0 }];
        fc.pre(
          effectiveEvents(log).events.some(
            ({ kind }) => !['rep', 'held', 'live-over'].includes(kind),
          ),
        );
        expect(foldEvents(session, back)).toEqual(foldEvents(session, log));
      }),
    );
  });
});
