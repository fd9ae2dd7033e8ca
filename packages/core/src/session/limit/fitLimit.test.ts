import { describe, expect, it } from 'vitest';
import { findExercise } from '../../anatomy/index.ts';
import { pulldown } from '../boathouse.testing.ts';
import type { LiftPlan } from '../LiftPlan.ts';
import type { LaidOut } from '../layOut.ts';
import { minutesOf } from '../minutesOf.ts';
import type { TimelineItem } from '../SessionPlan.ts';
import { fitLimit } from './fitLimit.ts';
import type { KeptLift } from './LiftPieces.ts';
import { piecesOf } from './piecesOf.ts';

function named(id: string) {
  const found = findExercise(id);
  if (found.kind !== 'found') throw new Error(`${id} has left the list of exercises`);
  return found.exercise;
}

interface Shape {
  readonly sets?: number;
  /** Purposes of the warm-up sets. */
  readonly steps?: readonly string[];
  readonly chainSeconds?: number;
  readonly overrules?: object;
  readonly exercise?: string;
}

function planned({
  sets = 2,
  steps = [],
  chainSeconds = 0,
  overrules,
  exercise = 'cable-pulldown',
}: Shape) {
  return {
    kind: 'planned',
    lift: {
      exercise: named(exercise),
      intent: { ...pulldown, sets, ...(overrules && { overrules }) },
    },
    sets: Array.from({ length: sets }, () => ({})),
    warmUp:
      steps.length > 0
        ? { kind: 'ramp', steps: steps.map((purpose) => ({ purpose })) }
        : { kind: 'no-ramp' },
    ...(chainSeconds > 0 && { chain: { addedSeconds: chainSeconds } }),
  } as unknown as LiftPlan;
}

/** A minute to set up, 20 s a warm-up set, a minute a set, two minutes between sets. */
function timelineFor(plans: readonly LiftPlan[]): readonly TimelineItem[] {
  let startSeconds = 0;
  return plans.flatMap((plan, lift) => {
    if (plan.kind !== 'planned') return [];
    const piece = (kind: TimelineItem['kind'], step: number, seconds: number) => {
      const item = { kind, lift, step, startSeconds, seconds };
      startSeconds += seconds;
      return item;
    };
    const warm = plan.warmUp.kind === 'ramp' ? plan.warmUp.steps : [];
    return [
      piece('change', 0, 60),
      ...warm.map((_, step) => piece('warm-up', step, 20)),
      ...plan.sets.flatMap((_, step) => [
        ...(step > 0 ? [piece('rest', step - 1, 120)] : []),
        piece(
          'work',
          step,
          60 + (step + 1 === plan.sets.length ? (plan.chain?.addedSeconds ?? 0) : 0),
        ),
      ]),
    ];
  });
}

const laidOut = (plans: readonly LiftPlan[]): LaidOut => {
  const timeline = timelineFor(plans);
  return { lifts: plans, timeline, minutes: minutesOf(timeline) };
};
const piecesFor = (...shapes: readonly Shape[]) => {
  const plans = shapes.map(planned);
  return piecesOf(plans, timelineFor(plans));
};

describe('piecesOf', () => {
  it('takes further sets with the rest before them, and what follows failure by itself', () => {
    const [one] = piecesFor({ sets: 3, chainSeconds: 30 });
    expect(one).toMatchObject({
      lift: 0,
      leanSeconds: 120,
      leanSets: 1,
      furtherSets: [180, 180],
      chainSeconds: 30,
      lightSteps: [],
      stays: false,
    });
    // a single set keeps its minute, and the chain comes on top
    expect(piecesFor({ sets: 1, chainSeconds: 30 })[0]).toMatchObject({
      leanSeconds: 120,
      furtherSets: [],
      chainSeconds: 30,
    });
  });

  it('takes light warm-up sets of all lifts but the first, and leaves one', () => {
    const steps = ['circulation', 'circulation', 'position'];
    const [first, second] = piecesFor({ steps }, { steps });
    expect(first).toMatchObject({ lightSteps: [], leanSeconds: 180 });
    expect(second).toMatchObject({ lightSteps: [20, 20], leanSeconds: 140 });
    const [, all] = piecesFor({}, { steps: ['circulation', 'circulation'] });
    expect(all?.lightSteps).toEqual([20]);
    const [, heavy] = piecesFor({}, { steps: ['circulation', 'position', 'load'] });
    expect(heavy?.lightSteps).toEqual([20]);
    const [, single] = piecesFor({}, { steps: ['circulation'] });
    expect(single?.lightSteps).toEqual([]);
    const [, fixed] = piecesFor({}, { steps, overrules: { warmUp: [] } });
    expect(fixed?.lightSteps).toEqual([]);
  });

  it('passes over what is left out: the next one is the first', () => {
    const gone = { kind: 'left-out' } as LiftPlan;
    const plans = [gone, planned({ steps: ['circulation', 'position'] })];
    const pieces = piecesOf(plans, timelineFor(plans));
    expect(pieces.map(({ lift, lightSteps }) => [lift, lightSteps])).toEqual([[1, []]]);
  });

  it('leaves what is fixed, and all tries of a load that is looked for', () => {
    expect(piecesFor({ sets: 3, overrules: { sets: 3 } })[0]).toMatchObject({
      leanSets: 3,
      furtherSets: [],
      leanSeconds: 480,
      stays: true,
    });
    expect(piecesFor({ overrules: { restSeconds: 60 } })[0]).toMatchObject({
      leanSets: 1,
      stays: true,
    });
    expect(piecesFor({ overrules: {} })[0]?.stays).toBe(false);
    const { warmUp: _, ...search } = planned({ sets: 2 }) as unknown as Record<string, unknown>;
    const finding = { ...search, kind: 'finding' } as unknown as LiftPlan;
    const timeline = timelineFor([planned({}), planned({ sets: 2 })]);
    expect(piecesOf([planned({}), finding], timeline)[1]).toMatchObject({
      leanSets: 2,
      furtherSets: [],
      leanSeconds: 300,
      chainSeconds: 0,
    });
  });
});

const PRESS = 'dumbbell-bench-press';

describe('fitLimit', () => {
  const whole = laidOut([planned({ exercise: PRESS }), planned({})]);
  /** What is kept of it, planned anew; `slower` seconds longer than its parts were. */
  const again =
    (slower = 0, asked: (readonly KeptLift[])[] = []) =>
    (kept: readonly KeptLift[]) => {
      asked.push(kept);
      const found = laidOut(
        kept.map(({ sets, lift }) => planned({ sets, ...(lift === 0 && { exercise: PRESS }) })),
      );
      return { ...found, minutes: { ...found.minutes, total: found.minutes.total + slower / 60 } };
    };

  it('changes nothing where all fits, to the minute', () => {
    // twice a minute to set up, two sets and a rest of two minutes: 10 minutes
    expect(whole.minutes.total).toBe(10);
    const fit = fitLimit(whole, 10, () => {
      throw new Error('what fits is not planned anew');
    });
    expect(fit).toEqual({ kind: 'fits', laidOut: whole, dropped: [] });
  });

  it('drops as much as is needed, and names it', () => {
    const fit = fitLimit(whole, 7, again());
    if (fit.kind !== 'fits') throw new Error(fit.kind);
    expect(fit.laidOut.minutes.total).toBe(7);
    expect(fit.dropped.map(({ kind, lift, minutesSaved }) => [kind, lift, minutesSaved])).toEqual([
      ['work-set', 0, 3],
    ]);
  });

  it('drops a little more where what is left takes longer than before', () => {
    const asked: (readonly KeptLift[])[] = [];
    const fit = fitLimit(whole, 7, again(90, asked));
    if (fit.kind !== 'fits') throw new Error(fit.kind);
    // 7 minutes and 90 s are too long, so the other further set goes as well
    expect(asked.map((kept) => kept.map(({ sets }) => sets).sort())).toEqual([
      [1, 2],
      [1, 1],
    ]);
    expect(fit.laidOut.minutes.total).toBe(5.5);
    expect(fit.dropped).toHaveLength(2);
  });

  it('comes down by what is too long', () => {
    const asked: (readonly KeptLift[])[] = [];
    // 7 minutes of parts take 9: half a minute too long for 8.5, and again after 8, 7.5 and 7;
    // for 6.5 minutes both further sets go
    fitLimit(whole, 8.5, again(120, asked));
    expect(asked.map((kept) => kept.map(({ sets }) => sets).sort())).toEqual([
      [1, 2],
      [1, 2],
      [1, 2],
      [1, 2],
      [1, 1],
    ]);
  });

  it('comes down by a second at least', () => {
    const asked: (readonly KeptLift[])[] = [];
    fitLimit(whole, 7, again(0.001, asked));
    expect(asked).toHaveLength(2);
  });

  it('tries each lift alone, the one of most worth first, where no parts fit', () => {
    const asked: (readonly KeptLift[])[] = [];
    // a lift with one set has two minutes, and each takes half a minute longer
    const fit = fitLimit(whole, 1.5, again(30, asked));
    expect(fit).toEqual({ kind: 'too-short', leastMinutes: 2.5 });
    expect(
      asked.map((kept) => kept.map(({ lift, sets, skipChain }) => [lift, sets, skipChain])),
    ).toEqual([[[1, 1, true]], [[0, 1, true]]]);
    // the same the other way round
    const turned = laidOut([planned({}), planned({ exercise: PRESS })]);
    const first: (readonly KeptLift[])[] = [];
    fitLimit(turned, 1.5, (kept) => {
      first.push(kept);
      return whole;
    });
    expect(first.map(([kept]) => kept?.lift)).toEqual([0, 1]);
  });

  it('takes one alone that is shorter than it was among the others', () => {
    const fit = fitLimit(whole, 1.5, again(-30));
    if (fit.kind !== 'fits') throw new Error(fit.kind);
    expect(fit.laidOut.minutes.total).toBe(1.5);
    expect(fit.dropped.map(({ kind, lift }) => [kind, lift])).toEqual([
      ['work-set', 1],
      ['lift', 0],
    ]);
  });

  it('keeps together what is fixed, with no light warm-up sets', () => {
    const fixed = laidOut([
      planned({ sets: 2 }),
      planned({ sets: 2, overrules: { sets: 2 }, steps: ['circulation', 'position'] }),
      planned({ sets: 2, overrules: { restSeconds: 60 } }),
    ]);
    const asked: (readonly KeptLift[])[] = [];
    const fit = fitLimit(fixed, 3, (kept) => {
      asked.push(kept);
      return fixed;
    });
    expect(fit).toEqual({ kind: 'too-short', leastMinutes: fixed.minutes.total });
    expect(asked).toEqual([
      [
        { lift: 1, sets: 2, skipSteps: 1, skipChain: true },
        { lift: 2, sets: 1, skipSteps: 0, skipChain: true },
      ],
    ]);
  });
});
