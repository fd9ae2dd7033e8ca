import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadValue } from '../load/index.ts';
import { client, gym, intentOf, pulldown, pulldownSets } from './boathouse.testing.ts';
import type { Client, ClientSet } from './Client.ts';
import { casesTimes } from './cases.testing.ts';
import type { LiftIntent, LiftOverrules } from './Intent.ts';
import type { LiftPlan } from './LiftPlan.ts';
import { planSession } from './planSession.ts';

const [known] = pulldownSets as readonly [ClientSet];
const places = [
  ['cable-pulldown', 'pulldown', 52.5],
  ['barbell-bent-over-row', 'short-bar', 55],
  ['dumbbell-curl', 'dumbbells', 10],
  ['one-arm-dumbbell-row', 'dumbbells', 22],
  ['chin-up', 'station', 0],
] as const;
const strong: Client = {
  ...client,
  sets: places.map(([exercise, equipment, value]) => ({
    ...known,
    exercise,
    equipment,
    load: { value, unit: 'kg' },
  })),
};
const lift = fc
  .record({
    place: fc.constantFrom(...places),
    fewest: fc.integer({ min: 5, max: 10 }),
    sets: fc.integer({ min: 1, max: 3 }),
    restSeconds: fc.constantFrom(60, 120, 180),
  })
  .map(
    ({ place: [exercise, equipment], fewest, ...rest }): LiftIntent => ({
      ...pulldown,
      ...rest,
      exercise,
      equipment,
      window: { minReps: fewest, maxReps: fewest + 3 },
    }),
  );
const lifts = fc.array(lift, { minLength: 1, maxLength: 3 });

function plan(wanted: readonly LiftIntent[], minutesAtMost?: number) {
  const intent = {
    ...intentOf(...wanted),
    ...(minutesAtMost !== undefined && { minutesAtMost }),
  };
  return planSession({ client: strong, gym, intent });
}

/** Everything that was chosen for a lift, as somebody would fix it. */
function chosenOf(found: LiftPlan | undefined): LiftOverrules {
  if (found?.kind !== 'planned') return {};
  const { work, lift: done, warmUp } = found;
  return {
    variant: 'usual',
    load: loadValue(work.choice.shown, 'kg'),
    sets: done.intent.sets,
    restSeconds: done.intent.restSeconds,
    warmUp:
      warmUp.kind === 'ramp'
        ? warmUp.steps.map(({ load, reps }) => ({ load: loadValue(load.shown, 'kg'), reps }))
        : [],
  };
}

/** A plan without the intents, which hold what was fixed. */
const seen = (found: ReturnType<typeof plan>) =>
  JSON.stringify(found, (key, value) => (key === 'intent' || key === 'limit' ? undefined : value));

describe('wishes', () => {
  it('fixing what is chosen anyway changes nothing', () => {
    fc.assert(
      fc.property(lifts, (wanted) => {
        const free = plan(wanted);
        if (free.kind !== 'session') throw new Error(free.kind);
        const fixed = wanted.map((one, at) => ({ ...one, overrules: chosenOf(free.lifts[at]) }));
        expect(seen(plan(fixed))).toBe(seen(free));
      }),
      casesTimes(0.15),
    );
  });

  it('a session is never longer than its limit, and never without a lift', () => {
    fc.assert(
      fc.property(lifts, fc.integer({ min: 2, max: 40 }), (wanted, minutes) => {
        const found = plan(wanted, minutes);
        if (found.kind === 'too-short') {
          expect(found.leastMinutes).toBeGreaterThan(minutes);
          return;
        }
        if (found.kind !== 'session') throw new Error(found.kind);
        expect(found.minutes.total).toBeLessThanOrEqual(minutes);
        expect(found.lifts.some(({ kind }) => kind === 'planned')).toBe(true);
        const rests = found.timeline.filter(({ kind }) => kind === 'rest');
        for (const { lift: at, seconds } of rests) expect(seconds).toBe(wanted[at]?.restSeconds);
      }),
      casesTimes(0.3),
    );
  });
});
