import { describe, expect, it } from 'vitest';
import {
  type Equipment,
  type EquipmentUse,
  type PlateStock,
  weighLoading,
} from '../equipment/index.ts';
import { kg, type Load, toKg } from '../load/index.ts';
import { shareForReps } from '../strength/index.ts';
import { planRamp } from './planRamp.ts';
import type { RampPlan, RampQuestion } from './Ramp.ts';

const kilograms = (value: number) => ({ value, unit: 'kg' }) as const;
const bar: Equipment = { kind: 'barbell', id: 'bar', name: 'Bar', bar: kilograms(20) };
const plates = (weights: readonly number[], pieces = 8): readonly PlateStock[] =>
  weights.map((value) => ({ weight: kilograms(value), pieces }));
const club: EquipmentUse = { plates: plates([25, 20, 15, 10, 5, 2.5, 1.25]) };
const rack: Equipment = {
  kind: 'fixed',
  form: 'dumbbell',
  id: 'rack',
  name: 'Rack',
  weights: [4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26].map((value) => ({
    weight: kilograms(value),
    pieces: 2,
  })),
};

type Rest = Partial<RampQuestion> & Pick<RampQuestion, 'work' | 'workShare'>;

function answer(rest: Rest) {
  return planRamp({ equipment: bar, use: club, experience: 'trained', ...rest });
}

function ramp(rest: Rest): RampPlan {
  const plan = answer(rest);
  if (plan.kind !== 'ramp') throw new Error(`${plan.reason}: ${plan.message}`);
  return plan;
}

const loads = ({ steps }: RampPlan) => steps.map(({ load }) => toKg(load.load));
const reps = ({ steps }: RampPlan) => steps.map((step) => step.reps);
const jumps = (plan: RampPlan) => {
  const all = [...loads(plan), toKg(plan.work.load)];
  return all.slice(1).map((load, index) => load - (all[index] ?? 0));
};
const falls = (numbers: readonly number[]) =>
  numbers.every((number, index) => index === 0 || number <= (numbers[index - 1] ?? number));

describe('planRamp to an ordinary work load', () => {
  const plan = () => ramp({ work: kg(65), workShare: shareForReps(5) });

  it('opens with the empty bar and ends at 80 to 93 % in three to five steps', () => {
    const { steps } = plan();
    expect(toKg(steps[0]?.load.load ?? kg(0))).toBe(20);
    expect(steps.length).toBeGreaterThanOrEqual(3);
    expect(steps.length).toBeLessThanOrEqual(5);
    const last = steps.at(-1)?.shareOfWork ?? 0;
    expect(last).toBeGreaterThanOrEqual(0.8);
    expect(last).toBeLessThanOrEqual(0.93);
  });

  it('has jumps that never grow and repetitions that never rise, 20 at most', () => {
    const ordinary = plan();
    expect(falls(jumps(ordinary))).toBe(true);
    expect(falls(reps(ordinary))).toBe(true);
    expect(ordinary.reps).toBe(reps(ordinary).reduce((sum, count) => sum + count));
    expect(ordinary.reps).toBeLessThanOrEqual(20);
  });

  it('goes from circulation over rehearsal to a primer', () => {
    expect([...new Set(plan().steps.map(({ purpose }) => purpose))]).toEqual([
      'circulation',
      'rehearsal',
      'primer',
    ]);
  });

  it('keeps 97 % of the capacity, and tells how far that varies between people', () => {
    const { low, likely, high, level } = plan().capacityKept;
    expect(likely).toBeGreaterThanOrEqual(0.97);
    expect(low).toBeLessThan(likely);
    expect(high).toBeGreaterThan(likely);
    expect(level).toBe(0.8);
  });

  it('adds up sets, rests and the first change of load: nothing is put on for the first set', () => {
    const { steps, minutes } = plan();
    const seconds = steps.reduce((sum, step) => sum + step.seconds + step.restSeconds, 0);
    expect(minutes).toBe(seconds / 60);
    expect(steps.at(-1)?.restSeconds).toBeGreaterThanOrEqual(120);
    expect(steps.slice(0, -1).every(({ restSeconds }) => restSeconds <= 60)).toBe(true);
  });

  it('promises nothing about injuries', () => {
    expect(plan().notes.map(({ code }) => code)).toContain('warmup.no-injury-data');
  });
});

describe('planRamp near the lightest load', () => {
  const use = { plates: plates([10, 5, 2.5, 1.25]) };

  it('merges what a percentage scheme would scatter below the bar: 20 and 25 for 30', () => {
    const plan = ramp({ work: kg(30), workShare: shareForReps(8), use, experience: 'new' });
    expect(loads(plan)).toEqual([20, 25]);
    expect(falls(reps(plan))).toBe(true);
  });

  it('makes one step of two wishes that come to the same load', () => {
    // pairs of 3 and 1 kg make 20, 22, 26 and 28
    const coarse = { plates: plates([3, 1], 2) };
    const plan = ramp({ work: kg(28), workShare: 0.95, use: coarse });
    expect(loads(plan)).toEqual([...new Set(loads(plan))]);
    expect(loads(plan).every((load) => [20, 22, 26].includes(load))).toBe(true);
  });

  it('has no step to the empty bar itself, and offers a lighter implement', () => {
    const plan = answer({ work: kg(20), workShare: 0.8, use });
    expect(plan).toMatchObject({ kind: 'no-ramp', reason: 'work-is-the-lightest-load' });
    expect(plan.kind === 'no-ramp' && plan.message).toMatch(/lighter implement/);
    expect(plan.kind === 'no-ramp' && plan.changeToWork.pieces).toBe(0);
  });

  it('keeps those new to lifting further from the work load', () => {
    const share = (experience: 'new' | 'trained') =>
      ramp({ work: kg(100), workShare: 0.9, experience }).steps.at(-1)?.shareOfWork;
    expect(share('new')).toBe(0.85);
    expect(share('trained')).toBe(0.9);
  });
});

describe('planRamp to a very strong deadlift', () => {
  const plan = () => ramp({ work: kg(240), workShare: shareForReps(3), fromFloor: true });

  it('opens at 60 to 70 with full-size plates and takes five to eight steps to 88 to 95 %', () => {
    const heavy = plan();
    expect(loads(heavy)[0]).toBeGreaterThanOrEqual(60);
    expect(loads(heavy)[0]).toBeLessThanOrEqual(70);
    expect(heavy.steps.length).toBeGreaterThanOrEqual(5);
    expect(heavy.steps.length).toBeLessThanOrEqual(8);
    const last = heavy.steps.at(-1)?.shareOfWork ?? 0;
    expect(last).toBeGreaterThanOrEqual(0.88);
    expect(last).toBeLessThanOrEqual(0.95);
  });

  it('has singles above 80 %, 18 repetitions at most, and jumps that shrink', () => {
    const heavy = plan();
    for (const step of heavy.steps) if (step.shareOfWork > 0.8) expect(step.reps).toBe(1);
    expect(heavy.reps).toBeLessThanOrEqual(18);
    expect(falls(jumps(heavy))).toBe(true);
  });

  it('strips down without the ends differing by more than one large plate', () => {
    const { stripDown, work } = plan();
    expect(stripDown.mostSideDifference).toBeLessThanOrEqual(kg(25));
    expect(stripDown.pieces).toBe(work.loading.pieces);
  });

  it('puts the bar on blocks where no plate is large enough', () => {
    const small = { plates: plates([10, 5, 2.5]) };
    const low = ramp({ work: kg(50), workShare: 0.85, use: small, fromFloor: true });
    expect(low.notes.map(({ code }) => code)).toContain('warmup.raise-the-bar');
    const bumpers = [{ weight: kilograms(10), pieces: 4, diameterMm: 450 }, ...plates([5], 4)];
    const high = ramp({ work: kg(60), workShare: 0.85, use: { plates: bumpers }, fromFloor: true });
    expect(high.notes.map(({ code }) => code)).not.toContain('warmup.raise-the-bar');
    expect(loads(high)[0]).toBe(40);
  });
});

describe('planRamp in the course of a session', () => {
  it('gives the second exercise of warm muscles one step or none', () => {
    const cold = ramp({ equipment: rack, work: kg(24), workShare: shareForReps(10) });
    const warm = { equipment: rack, work: kg(24), workShare: shareForReps(10), alreadyWarm: 0.9 };
    expect(cold.steps.length).toBeGreaterThan(1);
    expect(ramp(warm).steps.length).toBe(1);
    const light = answer({ ...warm, workShare: shareForReps(15), alreadyWarm: 1 });
    expect(light).toMatchObject({ kind: 'no-ramp', reason: 'already-warm' });
  });

  it('gives a technical lift its own ramp, however warm the muscles are', () => {
    const lift = { work: kg(80), workShare: 0.85 };
    const own = ramp({ ...lift, alreadyWarm: 1, technical: true });
    expect(loads(own)).toEqual(loads(ramp(lift)));
  });

  it('takes one or two steps to sets of fifteen, and none to very light work', () => {
    const plan = ramp({ work: kg(60), workShare: shareForReps(15) });
    expect(plan.steps.length).toBeLessThanOrEqual(2);
    expect(answer({ work: kg(60), workShare: 0.5 })).toMatchObject({ reason: 'light-work' });
  });

  it('counts what the muscles already did as the start, not as the cost of the ramp', () => {
    const lift = { work: kg(80), workShare: 0.85, muscles: { chest: 1 } };
    const tired = { chest: { fast: 0.2, slow: 0.1 } };
    const plan = ramp({ ...lift, start: tired });
    expect(plan.capacityKept.likely).toBeGreaterThanOrEqual(0.97);
  });
});

describe('planRamp on other equipment', () => {
  it('moves the pin of a stack once a step', () => {
    const row: Equipment = {
      kind: 'stack',
      id: 'row',
      name: 'Cable row',
      first: kilograms(5),
      rest: [{ weight: kilograms(5), pieces: 17 }],
      pulleyRatio: 2,
    };
    const plan = ramp({ equipment: row, use: {}, work: kg(30), workShare: 0.85 });
    expect(plan.piecesHandled).toBe(plan.steps.length + 1);
    expect(plan.notes.map(({ code }) => code)).toContain('equipment.friction-not-included');
  });

  it('warms up to a belt with the body alone, or with help where there is help', () => {
    const station: Equipment = { kind: 'body', id: 'bar', name: 'Chin-up bar', belt: {} };
    const use = { plates: plates([10, 5], 2), bodyWeight: kilograms(80) };
    const belt = { equipment: station, use, work: kg(95), workShare: 0.85 };
    expect(loads(ramp(belt))).toContain(80);
    const helped = ramp({ ...belt, equipment: { ...station, assistance: [kilograms(30)] } });
    expect(loads(helped)[0]).toBe(50);
  });

  it('passes on what is not known, and a work load that cannot be made', () => {
    const band: Equipment = { kind: 'band', id: 'band', name: 'Band' };
    expect(answer({ equipment: band, work: kg(20), workShare: 0.8 })).toMatchObject({
      kind: 'none',
      reason: 'resistance-unknown',
    });
    expect(answer({ work: kg(61), workShare: 0.8 })).toMatchObject({
      kind: 'none',
      reason: 'work-load-not-reachable',
    });
  });
});

describe('planRamp above the work load', () => {
  const lift = { work: kg(100), workShare: shareForReps(10) };

  it('plans nothing above it unless asked', () => {
    expect(ramp(lift).aboveWork).toEqual({ kind: 'off' });
  });

  it('plans one repetition just above it when every condition holds', () => {
    const plan = ramp({ ...lift, aboveWork: { loadCanBeStopped: true } });
    const { aboveWork, changeToWork, work } = plan;
    if (aboveWork.kind !== 'included') throw new Error(aboveWork.kind);
    expect(loads(plan).every((load) => load < 100)).toBe(true);
    const changes = [...plan.steps, aboveWork.step].map(({ change }) => change);
    expect(plan.piecesHandled).toBe(
      [...changes, changeToWork, plan.stripDown].reduce((sum, { pieces }) => sum + pieces, 0),
    );
    expect(aboveWork.step.reps).toBe(1);
    expect(aboveWork.step.load.load).toBeGreaterThan(kg(100));
    expect(aboveWork.step.load.load).toBeLessThanOrEqual(kg(105));
    expect(aboveWork.step.restSeconds).toBeGreaterThanOrEqual(300);
    expect(changeToWork.pieces).toBeGreaterThan(0);
    expect(work.load).toBe(kg(100));
    const sources = (asked: RampPlan) => asked.sources.map(({ id }) => id);
    const shape = sources(ramp(lift));
    expect(shape.at(-1)).toBe('windlass-ramp-shape');
    expect(sources(plan)).toEqual([...shape, 'dobbs-2019', 'seitz-2016']);
  });

  it('takes the only load that there is above it', () => {
    const bars = {
      ...rack,
      form: 'barbell',
      weights: [10, 20, 30, 40, 42].map((value) => ({
        weight: kilograms(value),
        pieces: 1,
      })),
    } as const;
    const { aboveWork } = ramp({
      ...{ equipment: bars, work: kg(40), workShare: shareForReps(12) },
      aboveWork: { loadCanBeStopped: true },
    });
    expect(aboveWork.kind === 'included' && toKg(aboveWork.step.load.load)).toBe(42);
  });

  it('aims at 3 % above it', () => {
    const use = { plates: plates([20, 10, 5, 2.5, 1.25, 0.5]) };
    const asked = { aboveWork: { loadCanBeStopped: true }, percentOffPerPiece: 0 };
    const { aboveWork } = ramp({ ...lift, ...asked, use });
    expect(aboveWork.kind === 'included' && toKg(aboveWork.step.load.load)).toBe(103);
  });

  it('leaves it out, and says why, for each condition', () => {
    const unmet = (rest: Partial<RampQuestion>) => {
      const plan = ramp({ ...lift, aboveWork: { loadCanBeStopped: true }, ...rest });
      if (plan.aboveWork.kind !== 'left-out') throw new Error(plan.aboveWork.kind);
      return plan.aboveWork.conditions.filter(({ met }) => !met).map(({ id }) => id);
    };
    expect(unmet({ experience: 'new' })).toEqual(['experience']);
    expect(unmet({ aboveWork: { loadCanBeStopped: false } })).toEqual(['load-can-be-stopped']);
    expect(unmet({ workShare: shareForReps(3) })).toEqual(['well-short-of-failure']);
    expect(unmet({ use: { plates: plates([20, 10], 4) } })).toContain('load-exists');
  });
});

describe('planRamp with its settings', () => {
  const lift = { work: kg(97.5), workShare: 0.88 };

  it('handles fewer pieces the more a piece counts', () => {
    const pieces = [0, 1, 2.5, 5, 10].map(
      (percentOffPerPiece) => ramp({ ...lift, percentOffPerPiece }).piecesHandled,
    );
    expect(falls(pieces)).toBe(true);
  });

  it('rests as long as the next change of load takes', () => {
    const { steps, changeToWork } = ramp({ ...lift, secondsPerPiece: 30 });
    const next = [...steps.slice(1).map(({ change }) => change), changeToWork];
    const usual = { circulation: 30, rehearsal: 45, primer: 60 };
    expect(steps.slice(0, -1).map(({ restSeconds }) => restSeconds)).toEqual(
      steps
        .slice(0, -1)
        .map(({ purpose }, at) => Math.max(usual[purpose], 30 * (next[at]?.pieces ?? 0))),
    );
  });

  it('does more repetitions when they may cost more', () => {
    const more = ramp({ ...lift, leastCapacity: 0.9 });
    expect(more.reps).toBeGreaterThan(ramp(lift).reps);
    expect(more.capacityKept.likely).toBeGreaterThanOrEqual(0.9);
  });

  it('says so when even one short step costs a lifter too much', () => {
    const curve = { kappa: 3, alpha: 0.5, kappaLogSd: 0.3, sources: [] };
    const plan = ramp({ ...lift, curve });
    expect(plan.steps.length).toBe(1);
    expect(plan.capacityKept.likely).toBeLessThan(0.97);
    expect(plan.notes.map(({ code }) => code)).toContain('warmup.capacity-not-kept');
  });

  it('refuses numbers out of range', () => {
    for (const wrong of [
      { workShare: 1.2 },
      { workShare: Number.NaN },
      { work: Number.NaN as Load },
      { work: kg(0) },
      { secondsPerRep: 0 },
      { alreadyWarm: 2 },
      { percentOffPerPiece: -1 },
      { secondsPerPiece: Number.POSITIVE_INFINITY },
      { leastCapacity: 1 },
    ]) {
      expect(() => answer({ ...lift, ...wrong })).toThrow(/planRamp/);
    }
  });

  it('names loadings that weigh what the step says', () => {
    for (const { load } of ramp(lift).steps) {
      expect(weighLoading(bar, load.loading, club)).toMatchObject({ load: load.load });
    }
  });
});
