import { describe, expect, it } from 'vitest';
import type { Band } from '../basis/index.ts';
import { kg, toKg } from '../load/index.ts';
import { client, gym, intentOf, pulldown } from './boathouse.testing.ts';
import type { FindingLift, LeftOutLift, LiftPlan, PlannedLift } from './LiftPlan.ts';
import type { Lift } from './liftOf.ts';
import { planSession } from './planSession.ts';
import { sheetLift } from './sheetLift.ts';

const session = planSession({ client, gym, intent: intentOf(pulldown) });
const [found] = session.kind === 'session' ? session.lifts : [];
if (found?.kind !== 'planned') throw new Error('not planned');
const plan: PlannedLift = found;

/** Numbers and units stand together by blanks that do not break. */
const plain = (words: string) => words.replaceAll(/\s/g, ' ');
function sheet(change: Partial<PlannedLift>) {
  const made = sheetLift({ ...plan, ...change }, 'kg', 'en');
  if (made.kind !== 'planned') throw new Error(made.kind);
  return made;
}
const withLift = (change: Partial<Lift>) => ({ lift: { ...plan.lift, ...change } });
const band = (low: number, likely: number, high: number): Band => ({
  low,
  likely,
  high,
  level: 0.8,
});

describe('the head of a lift', () => {
  it('names its set-up, its equipment, its tempo and its window', () => {
    expect(sheet({})).toMatchObject({
      name: 'Cable pulldown',
      equipment: 'Pulldown',
      tempo: '4-0-2-0',
      window: { minReps: 8, maxReps: 11 },
      restSeconds: 150,
    });
    const [usual] = plan.lift.exercise.variants;
    if (!usual) throw new Error('no set-up');
    const variant = { ...usual, name: 'One arm' };
    expect(sheet(withLift({ variant })).name).toBe('Cable pulldown, one arm');
  });

  it('counts the phases in the order in which they happen', () => {
    const count = (tempo: Lift['intent']['tempo'], change: object = {}) =>
      sheet(
        withLift({
          intent: { ...plan.lift.intent, tempo },
          exercise: { ...plan.lift.exercise, ...change },
        }),
      ).count;
    const all = {
      lowerSeconds: 3,
      pauseAfterLowerSeconds: 1,
      liftSeconds: 2,
      pauseAfterLiftSeconds: 4,
    };
    expect(count(all)).toBe('lift 2\u00a0s, pause 4\u00a0s, lower 3\u00a0s, pause 1\u00a0s');
    expect(count(all, { startsWith: 'lower' })).toBe(
      'lower 3\u00a0s, pause 1\u00a0s, lift 2\u00a0s, pause 4\u00a0s',
    );
    expect(count({ ...all, liftSeconds: 'X' })).toContain('lift fast');
  });
});

describe('the warm-up of a lift', () => {
  const { warmUp } = plan;
  if (warmUp.kind !== 'ramp') throw new Error(warmUp.kind);

  it('is step by step what is loaded and done', () => {
    const made = sheet({});
    expect(made.warmUp.map(({ reps, restSeconds }) => [reps, restSeconds])).toEqual(
      warmUp.steps.map(({ reps, restSeconds }) => [reps, restSeconds]),
    );
    for (const { load, change } of made.warmUp) {
      expect(plain(load.words)).toMatch(/^[\d.]+ kg on the stack$/);
      expect(plain(load.loading)).toMatch(/^pin at /);
      expect(plain(change)).toMatch(/^pin to |^add |^remove /);
    }
    expect(made.warmUpNote).toBe('');
    expect(made.changeToWork).not.toBe('');
  });

  it('is a note where there is none', () => {
    const { changeToWork } = warmUp;
    const none = { kind: 'none', reason: 'work-load-not-reachable', message: 'None.' } as const;
    expect(sheet({ warmUp: none })).toMatchObject({
      warmUp: [],
      changeToWork: '',
      warmUpNote: 'None.',
    });
    const no = {
      ...warmUp,
      kind: 'no-ramp',
      message: 'As asked.',
    } as unknown as PlannedLift['warmUp'];
    const made = sheet({ warmUp: no });
    expect(made).toMatchObject({ warmUp: [], warmUpNote: 'As asked.' });
    expect(made.changeToWork).toBe(sheet({}).changeToWork);
    expect(changeToWork).toBeDefined();
  });
});

describe('the notes of a lift', () => {
  const notes = (change: Partial<PlannedLift>) => sheet(change).notes.map(plain);

  it('say what ends a set', () => {
    expect(notes({})[0]).toBe('Go on until the next rep cannot be lifted at this tempo.');
    expect(notes({ repsInReserve: 1 })[0]).toBe('End each set with 1 rep left.');
    expect(notes({ repsInReserve: 2 })[0]).toBe('End each set with 2 reps left.');
    const stops = withLift({ exercise: { ...plan.lift.exercise, atFailureAlone: 'needs-stops' } });
    expect(notes(stops)[0]).toMatch(/tempo\. Set the stops or pins/);
    expect(notes({ ...stops, repsInReserve: 1 })[0]).toBe('End each set with 1 rep left.');
    const chain = {
      stages: [],
      dose: { hardSets: 1 },
      needs: [],
      notes: [],
      notFor: [],
    } as unknown as NonNullable<PlannedLift['chain']>;
    expect(notes({ chain })[0]).toBe('Go on until the next rep cannot be lifted at this tempo.');
    expect(notes({ chain, repsInReserve: 1 })[0]).toBe(
      'End each set with 1 rep left. Only the last set goes until a rep cannot be lifted.',
    );
  });

  it('say why this load, and what it rests on', () => {
    const basis = (sets: number, lastDate?: string) => ({
      basis: { sets, passedOver: [], ...(lastDate && { lastDate }) },
    });
    expect(notes(basis(1, '2027-03-08'))[1]).toMatch(
      / It rests on 1 set, the last of March 8, 2027\.$/,
    );
    expect(notes(basis(3))[1]).toMatch(/ It rests on 3 sets\.$/);
    const reasons = (['best-chance', 'careful-first', 'capped', 'fixed'] as const).map(
      (reason) => notes({ reason })[1],
    );
    expect(new Set(reasons).size).toBe(4);
  });

  it('count the sets that were not used, reason by reason', () => {
    const [set] = client.sets;
    if (!set) throw new Error('no set');
    const passedOver = ['old', 'tired', 'old'].map((why) => ({ set, why }));
    const all = notes({ basis: { sets: 1, passedOver } });
    expect(all).toContain('Not used: 2 sets, old.');
    expect(all).toContain('Not used: 1 set, tired.');
  });

  it('name both neighbours with their chance, where there are some', () => {
    const chance = (shown: number, inside: number) => ({
      ...plan.work,
      inside,
      choice: { ...plan.work.choice, shown: kg(shown) },
    });
    const { lighter: _, heavier: __, ...alone } = plan;
    const both = sheetLift(
      { ...alone, lighter: chance(40, 0.25), heavier: chance(60, 0.5) },
      'kg',
      'en',
    );
    const said = both.kind === 'planned' ? both.notes.map(plain) : [];
    expect(said).toContain('One lighter: 40 kg, 25 %.');
    expect(said).toContain('One heavier: 60 kg, 50 %.');
    const none = sheetLift(alone, 'kg', 'en');
    const words = none.kind === 'planned' ? none.notes : [];
    expect(words.join(' ')).not.toMatch(/One (lighter|heavier)/);
    expect(words.every((note) => typeof note === 'string')).toBe(true);
  });

  it('add the doubts of the forecast and what the equipment has to say', () => {
    const work = { ...plan.work, doubts: ['light-load'] as const };
    expect(notes({ work })).toContain(
      'Below half of the one-rep max the curve errs by a sixth of the count and more.',
    );
    const loads = { ...plan.lift.loads, notes: [{ code: 'x', message: 'A pulley.' }] };
    expect(notes(withLift({ loads }))).toContain('A pulley.');
  });
});

describe('what is fixed in a lift', () => {
  const fixed = (overruled: PlannedLift['overruled'], change: Partial<PlannedLift> = {}) =>
    sheet({ overruled, ...change }).fixed.map(plain);
  const { warmUp } = plan;
  if (warmUp.kind !== 'ramp') throw new Error(warmUp.kind);

  it('is said with what would be chosen, in the order of the work', () => {
    const [variant] = plan.lift.exercise.variants;
    if (!variant) throw new Error('no set-up');
    const steps = warmUp.steps.slice(0, 2);
    const words = fixed({
      exercise: { chosen: 'chin-up' },
      variant: { chosen: variant.id },
      load: { chosen: { ...plan.work.choice, shown: kg(50) } },
      warmUp: { chosen: { ...warmUp, steps } },
      sets: { chosen: 2 },
      restSeconds: { chosen: 150 },
    });
    const shown = steps.map(({ load, reps }) => `${toKg(load.shown)} kg × ${reps}`).join(', ');
    const name = variant.name.charAt(0).toLowerCase() + variant.name.slice(1);
    expect(words).toEqual([
      'The exercise is fixed; Chin-up would be chosen.',
      `The set-up is fixed; "${name}" would be used.`,
      'The load is fixed; 50 kg would be chosen.',
      `The warm-up is fixed; ${shown} would be chosen.`,
      'The number of sets is fixed; 2 would be done.',
      'The rest is fixed; 150 s would be taken.',
    ]);
  });

  it('is said where nothing or something unknown would be chosen', () => {
    const none = { ...warmUp, kind: 'no-ramp', message: '' } as unknown as PlannedLift['warmUp'];
    expect(
      fixed({
        exercise: { chosen: 'my-own' },
        variant: { chosen: 'usual' },
        load: { chosen: undefined },
        warmUp: { chosen: none },
      }),
    ).toEqual([
      'The exercise is fixed; my-own would be chosen.',
      'The set-up is fixed; the usual one would be used.',
      'The load is fixed; none would be chosen.',
      'The warm-up is fixed; none would be chosen.',
    ]);
    expect(fixed({})).toEqual([]);
  });
});

describe('a lift in rounds and past failure', () => {
  it('has the longest wait in whole seconds, and none for a single round', () => {
    const join = {
      kind: 'in-turn',
      place: 'first',
      transitionSeconds: 20,
      waits: [30.2, 41.1],
    } as const;
    expect(sheet({ join }).join).toEqual({
      kind: 'in-turn',
      place: 'first',
      transitionSeconds: 20,
      waitSeconds: 42,
      notes: [],
    });
    expect(sheet({ join: { ...join, waits: [] } }).join).not.toHaveProperty('waitSeconds');
    expect(sheet({})).not.toHaveProperty('join');
    expect(sheet({})).not.toHaveProperty('chain');
  });

  it('says what the first lift does to the second', () => {
    const effect = {
      usual: { ...plan.work, choice: { ...plan.work.choice, shown: kg(50) } },
      loadShare: band(0.7, 0.85, 0.95),
      recovered: 0.5,
      sharePerRep: 0.0234,
      cautions: [{ what: 'Mixed.', instead: 'Try.' }],
    } as unknown as NonNullable<NonNullable<PlannedLift['join']>['effect']>;
    const made = sheet({
      join: { kind: 'pair', place: 'second', transitionSeconds: 10, waits: [150], effect },
    });
    expect(made.join?.notes.map(plain)).toEqual([
      'Without the isolation set: 50 kg. After it about 85 % of what is moved there (70 % to 95 % in 8 of 10).',
      'After the first try change the load by 2.3 % for each rep more or fewer than wanted.',
      'Mixed. Try.',
    ]);
  });

  it('lists what follows the lifting, with what it needs and costs', () => {
    const stage = (kind: object, count: Band | null) => ({
      stage: kind,
      count,
      secondsUnderLoad: band(1, 2, 3),
    });
    const chain = {
      stages: [
        stage({ kind: 'lift' }, band(8, 9, 10)),
        stage({ kind: 'hold', at: 'middle', maxSeconds: 20 }, null),
        stage({ kind: 'lower', secondsEach: 5, maxLowerings: 3 }, band(1, 2, 3)),
      ],
      dose: { hardSets: 1.75 },
      needs: [{ words: 'A step.' }],
      notes: ['No study.'],
      notFor: ['The young.'],
    } as unknown as NonNullable<PlannedLift['chain']>;
    expect(sheet({ chain }).chain).toEqual({
      stages: [
        { words: 'hold in the middle position, 20 s at most', seconds: band(1, 2, 3) },
        {
          words: 'lower 3 times at most, each over 5 s',
          count: band(1, 2, 3),
          seconds: band(1, 2, 3),
        },
      ],
      needs: ['A step.'],
      notes: ['It costs as much recovery as 1.75 sets to failure.', 'No study.'],
      notFor: ['The young.'],
    });
  });
});

describe('lifts that are looked for or left out', () => {
  it('says how a load is looked for, from the lightest one or the one that is fixed', () => {
    const finding = {
      kind: 'finding',
      lift: plan.lift,
      secondsPerRep: 6,
      firstTry: plan.work.choice,
      reps: 8,
      stopWithLeft: 2,
      mostTries: 4,
      basis: plan.basis,
      chosenFor: { muscles: ['lats'], reasons: ['For lats.'] },
      overruled: {},
      refused: [{ what: 'chain', code: 'x', message: 'No chain.' }],
    } satisfies FindingLift;
    const made = sheetLift(finding, 'kg', 'en');
    expect(made).toMatchObject({
      kind: 'finding',
      name: 'Cable pulldown',
      reps: 8,
      chosenFor: ['For lats.'],
      refused: ['No chain.'],
      fixed: [],
    });
    const notes = (one: FindingLift) => {
      const sheetOf = sheetLift(one, 'kg', 'en');
      return sheetOf.kind === 'finding' ? sheetOf.notes : [];
    };
    expect(notes(finding)).toEqual([
      'Nothing is known yet, so the first load is the lightest one. Do 8 reps and stop early if only 2 are left.',
      'Then step up by how many were left, in at most 4 sets; write each one down with its reps left.',
    ]);
    const fixed = { ...finding, overruled: { load: { chosen: plan.work.choice } } };
    expect(notes(fixed)[0]).toMatch(/^Nothing is known yet\. Do 8 reps/);
  });

  it('names what is left out, also where it is no exercise, and what to do instead', () => {
    const gone: LeftOutLift = {
      kind: 'left-out',
      intent: pulldown,
      reason: 'limits',
      message: 'It hurts.',
      exchanges: [
        {
          exercise: 'chin-up',
          equipment: 'station',
          name: 'Chin-up',
          equipmentName: 'Chin-up station',
          reasonsFor: ['Same.'],
          reasonsAgainst: ['Harder.'],
        },
      ],
    };
    const made = (one: LiftPlan) => sheetLift(one, 'kg', 'en');
    expect(made(gone)).toEqual({
      kind: 'left-out',
      name: 'Cable pulldown',
      reason: 'It hurts.',
      exchanges: [{ name: 'Chin-up', equipment: 'Chin-up station', reasons: ['Same.', 'Harder.'] }],
    });
    const own = { ...gone, intent: { ...pulldown, exercise: 'my-own-row' } };
    expect(made(own)).toMatchObject({ name: 'my own row' });
  });

  it('says why a lift was chosen, and what was refused', () => {
    const chosenFor = { muscles: ['lats'], reasons: ['For lats.'] } as const;
    const refused = [{ what: 'load', code: 'x', message: 'Not here.' }] as const;
    expect(sheet({ chosenFor, refused })).toMatchObject({
      chosenFor: ['For lats.'],
      refused: ['Not here.'],
    });
    expect(sheet({})).not.toHaveProperty('chosenFor');
  });
});
