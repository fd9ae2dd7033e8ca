import { describe, expect, it } from 'vitest';
import { client, gym, intentOf, pulldown, pulldownSets } from './boathouse.testing.ts';
import type { Client, ClientSet } from './Client.ts';
import type { LiftIntent } from './Intent.ts';
import { minutesOf } from './minutesOf.ts';
import { planSession } from './planSession.ts';
import type { PlannedSession } from './SessionPlan.ts';
import { timelineOf } from './timelineOf.ts';

const [known] = pulldownSets as readonly [ClientSet];
const row: LiftIntent = { ...pulldown, exercise: 'barbell-bent-over-row', equipment: 'short-bar' };
const curl: LiftIntent = { ...pulldown, exercise: 'dumbbell-curl', equipment: 'dumbbells' };
const setOf = (exercise: string, equipment: string, value: number): ClientSet => ({
  ...known,
  exercise,
  equipment,
  load: { value, unit: 'kg' },
});
const strong: Client = {
  ...client,
  sets: [
    known,
    setOf('barbell-bent-over-row', 'short-bar', 55),
    setOf('dumbbell-curl', 'dumbbells', 10),
  ],
};

function plan(minutesAtMost: number | undefined, ...lifts: readonly LiftIntent[]) {
  const intent = {
    ...intentOf(...lifts),
    ...(minutesAtMost !== undefined && { minutesAtMost }),
  };
  return planSession({ client: strong, gym, intent });
}

function session(minutesAtMost: number | undefined, ...lifts: readonly LiftIntent[]) {
  const found = plan(minutesAtMost, ...lifts);
  if (found.kind !== 'session') throw new Error(found.kind);
  return found;
}

const kinds = ({ limit }: PlannedSession) => limit?.dropped.map(({ kind }) => kind);

describe('a time limit', () => {
  const whole = session(undefined, row, pulldown, curl);

  it('changes nothing where everything fits, and says so', () => {
    const { limit, ...same } = session(90, row, pulldown, curl);
    expect(same).toEqual(whole);
    expect(limit).toEqual({ minutesAtMost: 90, without: whole.minutes, dropped: [] });
  });

  it('takes further sets before lifts, of small exercises before those of large ones', () => {
    // Each of the three has a second set of some three minutes.
    const fitted = session(whole.minutes.total - 2, row, pulldown, curl);
    expect(fitted.minutes.total).toBeLessThanOrEqual(whole.minutes.total - 2);
    expect(fitted.limit?.dropped).toMatchObject([{ kind: 'work-set', lift: 2, step: 1 }]);
    const shorter = session(whole.minutes.total - 8, row, pulldown, curl);
    expect(kinds(shorter)).toEqual(['work-set', 'work-set', 'work-set']);
    expect(shorter.lifts.map(({ kind }) => kind)).toEqual(['planned', 'planned', 'planned']);
  });

  it('takes a whole lift only when single sets are too long, and says what covers it', () => {
    const fitted = session(9, row, pulldown, curl);
    expect(fitted.minutes.total).toBeLessThanOrEqual(9);
    const gone = fitted.lifts.findIndex(({ kind }) => kind === 'left-out');
    expect(fitted.lifts[gone]).toMatchObject({ reason: 'no-time', exchanges: [] });
    expect(fitted.limit?.dropped.at(-1)).toMatchObject({ kind: 'lift', lift: gone });
  });

  it('never shortens a rest, and never takes the warm-up of the first lift', () => {
    const fitted = session(whole.minutes.total - 2, row, pulldown, curl);
    const [first] = fitted.lifts;
    const [before] = whole.lifts;
    if (first?.kind !== 'planned' || before?.kind !== 'planned') throw new Error('not planned');
    expect(first.warmUp).toEqual(before.warmUp);
    const rests = fitted.timeline.filter(({ kind }) => kind === 'rest');
    for (const { seconds } of rests) expect(seconds).toBe(150);
  });

  it('leaves what is fixed, and says when that is too much', () => {
    const fixed = { ...curl, overrules: { sets: 2 } };
    const fitted = session(whole.minutes.total - 2, row, pulldown, fixed);
    expect(fitted.limit?.dropped).toMatchObject([{ kind: 'work-set' }]);
    expect(fitted.limit?.dropped[0]?.lift).not.toBe(2);
    const all = [row, pulldown, curl].map((lift) => ({ ...lift, overrules: { sets: 2 } }));
    const tooMuch = plan(10, ...all);
    expect(tooMuch).toMatchObject({ kind: 'too-short', minutesAtMost: 10 });
    expect(tooMuch.kind === 'too-short' && tooMuch.leastMinutes).toBeCloseTo(
      whole.minutes.total,
      9,
    );
  });

  it('gives no session where not even one set fits', () => {
    // Two minutes to set up, and a set of eight repetitions and more at six seconds.
    expect(plan(2, row, pulldown, curl)).toMatchObject({ kind: 'too-short' });
  });
});

describe('instead of dropping, taking turns', () => {
  const press: LiftIntent = {
    ...pulldown,
    exercise: 'dumbbell-bench-press',
    equipment: 'dumbbells',
  };
  const both = {
    ...strong,
    sets: [...strong.sets, setOf('dumbbell-bench-press', 'dumbbells', 20)],
  };
  const fitted = (minutesAtMost: number) => {
    const intent = { ...intentOf(pulldown, press, curl), minutesAtMost };
    const found = planSession({ client: both, gym, intent });
    return found.kind === 'session' ? found.limit : undefined;
  };

  it('is offered for neighbours that work different muscles, with what it takes', () => {
    const limit = fitted(16);
    expect(limit?.dropped.length).toBeGreaterThan(0);
    expect(limit?.turns?.lifts).toEqual([[0, 1]]);
    expect(limit?.turns?.minutes).toBeLessThan(limit?.without.total ?? 0);
    expect(limit?.turns?.message).toMatch(/every rest as long as before/);
  });

  it('is not offered where nothing is dropped, nor for lifts of one muscle', () => {
    expect(fitted(60)?.turns).toBeUndefined();
    expect(session(9, row, pulldown).limit?.turns).toBeUndefined();
  });
});

describe('six exercises, three sets each, a minute a set, two minutes between all sets', () => {
  // A practitioner's sum: 18 sets and 17 pauses are 52 minutes, 54 with one more pause.
  const minute = { low: 10, likely: 10, high: 10, level: 0.8 };
  const [one] = session(undefined, { ...pulldown, sets: 3, restSeconds: 120 }).lifts;
  if (one?.kind !== 'planned') throw new Error('not planned');
  const sets = one.sets.map((set) => ({ ...set, reps: minute }));
  const warmUp = { kind: 'none', reason: 'work-load-not-reachable', message: '' } as const;
  const lift = { ...one, sets, warmUp };
  const minutes = minutesOf(
    timelineOf(
      Array.from({ length: 6 }, () => lift),
      120,
    ),
  );

  it('takes 52 minutes after the first set-up, with its parts named', () => {
    // The pause between two exercises is the time to change over; setting up the first comes on top.
    expect(minutes).toEqual({ work: 18, rest: 24, change: 12, warmUp: 0, total: 54 });
    expect(minutes.total - 2).toBe(52);
  });
});
