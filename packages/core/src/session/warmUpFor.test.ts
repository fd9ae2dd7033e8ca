import { describe, expect, it } from 'vitest';
import type { MuscleId } from '../anatomy/index.ts';
import { kg, loadValue, toKg } from '../load/index.ts';
import { client, gym, intentOf, pulldown } from './boathouse.testing.ts';
import type { FixedWarmUpSet, LiftIntent } from './Intent.ts';
import type { PlannedLift } from './LiftPlan.ts';
import { liftOf } from './liftOf.ts';
import { planSession } from './planSession.ts';
import { type WarmUpQuestion, warmUpFor } from './warmUpFor.ts';

const session = planSession({ client, gym, intent: intentOf(pulldown) });
const [found] = session.kind === 'session' ? session.lifts : [];
if (found?.kind !== 'planned' || found.warmUp.kind !== 'ramp') throw new Error('not planned');
const plan: PlannedLift = found;
const free = found.warmUp;
const question: WarmUpQuestion = {
  lift: plan.lift,
  work: plan.work,
  experience: 'some',
  start: {},
  warm: new Set(),
  skipSteps: 0,
};
const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const withFixed = (...warmUp: readonly FixedWarmUpSet[]) => {
  const intent: LiftIntent = { ...plan.lift.intent, overrules: { warmUp } };
  return warmUpFor({ ...question, lift: { ...plan.lift, intent } });
};
const ramp = (change: Partial<WarmUpQuestion> = {}) => {
  const { warmUp } = warmUpFor({ ...question, ...change });
  if (warmUp.kind !== 'ramp') throw new Error(warmUp.kind);
  return warmUp;
};
const steps = (change?: Partial<WarmUpQuestion>) =>
  ramp(change).steps.map(({ load }) => toKg(load.shown));

describe('warmUpFor', () => {
  it('is the one of the plan', () => {
    expect(warmUpFor(question)).toEqual({ warmUp: free, overruled: {}, refused: [] });
  });

  it('leaves out the lightest sets that a time limit takes', () => {
    const all = steps();
    expect(all.length).toBeGreaterThan(1);
    expect(steps({ skipSteps: 1 })).toEqual(all.slice(1));
    expect(steps({ skipSteps: 0 })).toEqual(all);
    const none = warmUpFor({ ...question, skipSteps: all.length }).warmUp;
    expect(none).toMatchObject({ kind: 'no-ramp', reason: 'as-asked' });
  });

  it('is shorter the more of the lift’s muscles are warm', () => {
    const muscles = Object.keys(plan.lift.shares) as MuscleId[];
    const warm = warmUpFor({ ...question, warm: new Set(muscles) }).warmUp;
    const left = warm.kind === 'ramp' ? warm.steps.length : 0;
    expect(left).toBeLessThan(free.steps.length);
    expect(steps({ warm: new Set<MuscleId>(['vasti']) })).toEqual(steps());
  });

  it('takes no set where there is none to take', () => {
    const muscles = Object.keys(plan.lift.shares) as MuscleId[];
    const light = { ...plan.work, share: { ...plan.work.share, likely: 0.2 } };
    const warm = { ...question, work: light, warm: new Set(muscles) };
    const none = warmUpFor(warm);
    expect(none.warmUp.kind).toBe('no-ramp');
    expect(warmUpFor({ ...warm, skipSteps: 1 })).toEqual(none);
  });

  it('counts a muscle as warm by its share of the work', () => {
    // of a pulldown 0.42 is for the lats and 0.04 for the mid-back
    const after = (...ids: readonly MuscleId[]) => {
      const { warmUp } = warmUpFor({ ...question, warm: new Set(ids) });
      return warmUp.kind === 'ramp' ? warmUp.steps.length : 0;
    };
    expect(after('mid-back')).toBe(steps().length);
    const all = Object.keys(plan.lift.shares) as MuscleId[];
    expect(after(...all.filter((id) => id !== 'mid-back'))).toBe(after(...all));
  });

  it('lets a bar that is lifted off the floor stand on plates of full height', () => {
    const notes = (exercise: string, change: object = {}) => {
      const plates = [{ weight: kilos(5), pieces: 20 }] as const;
      const lift = liftOf(
        { ...pulldown, exercise, equipment: 'short-bar' },
        { ...gym, plates },
        client.bodyWeight,
      );
      if (lift.kind !== 'lift') throw new Error(lift.message);
      const work = lift.loads.loads.find(({ shown }) => toKg(shown) === 65);
      if (!work) throw new Error('65 kg are not made');
      const asked = { ...lift, exercise: { ...lift.exercise, ...change } };
      const { warmUp } = warmUpFor({
        ...question,
        lift: asked,
        work: { ...plan.work, choice: work },
      });
      return warmUp.kind === 'ramp' ? warmUp.notes.map(({ code }) => code) : [warmUp.kind];
    };
    // plates of 5 kg are too small for it
    expect(notes('barbell-deadlift')).toContain('warmup.raise-the-bar');
    // a hinge that begins standing, and a row, are not lifted off the floor
    expect(notes('barbell-deadlift', { startsWith: 'lower' })).not.toContain(
      'warmup.raise-the-bar',
    );
    expect(notes('barbell-bent-over-row')).not.toContain('warmup.raise-the-bar');
  });

  it('takes more care of somebody new, and goes by the share of the work load', () => {
    const share = (likely: number) => ({
      ...plan.work,
      share: { ...plan.work.share, likely },
    });
    const near = { work: share(0.95) };
    const last = (change: Partial<WarmUpQuestion>) => steps(change).at(-1) ?? 0;
    // somebody new comes less near to the work load
    expect(last({ ...near, experience: 'new' })).toBeLessThan(
      last({ ...near, experience: 'some' }),
    );
    expect(ramp({ ...near, experience: 'experienced' })).toEqual(ramp(near));
    // shares beyond what a ramp is made for count as its ends
    expect(steps({ work: share(1.4) })).toEqual(steps({ work: share(1) }));
    expect(warmUpFor({ ...question, work: share(0.05) })).toEqual(
      warmUpFor({ ...question, work: share(0.2) }),
    );
    expect(warmUpFor({ ...question, work: share(0.5) })).not.toEqual(
      warmUpFor({ ...question, work: share(1) }),
    );
  });
});

describe('a fixed warm-up', () => {
  it('is taken as it is and marked with what would be chosen', () => {
    const { warmUp, overruled, refused } = withFixed(
      { load: kilos(10), reps: 50 },
      { load: kilos(30), reps: 1 },
    );
    if (warmUp.kind !== 'ramp') throw new Error(warmUp.kind);
    expect(warmUp.steps.map(({ load, reps }) => [toKg(load.shown), reps])).toEqual([
      [10, 50],
      [30, 1],
    ]);
    expect(overruled).toEqual({ warmUp: { chosen: free } });
    expect(refused).toEqual([]);
  });

  it('is no wish where it is what would be chosen', () => {
    const same = free.steps.map(({ load, reps }) => ({ load: loadValue(load.shown, 'kg'), reps }));
    expect(withFixed(...same)).toEqual({ warmUp: free, overruled: {}, refused: [] });
  });

  it.each([
    ['as heavy as the work load', toKg(plan.work.choice.shown), 3, 'session.warm-up-too-heavy'],
    ['not made here', 11, 3, 'session.load-not-here'],
    ['no repetition', 10, 0, 'session.warm-up-reps'],
    ['half a repetition', 10, 1.5, 'session.warm-up-reps'],
    ['more than fifty', 10, 51, 'session.warm-up-reps'],
  ])('is refused with a set that is %s', (_, value, reps, code) => {
    const { warmUp, overruled, refused } = withFixed({ load: kilos(value), reps });
    expect(refused).toMatchObject([{ what: 'warm-up', code }]);
    expect(warmUp).toEqual(free);
    expect(overruled).toEqual({});
  });

  it('is refused with a set of nothing', () => {
    const [first] = plan.lift.loads.loads;
    const empty = { ...first, load: kg(0), shown: kg(0) };
    const lift = {
      ...plan.lift,
      loads: { ...plan.lift.loads, loads: [empty, ...plan.lift.loads.loads] as const },
      intent: { ...plan.lift.intent, overrules: { warmUp: [{ load: kilos(0), reps: 5 }] } },
    };
    expect(warmUpFor({ ...question, lift }).refused).toMatchObject([
      { code: 'session.warm-up-too-heavy' },
    ]);
  });
});
