import { type Band, requireNumber, type Source } from '../basis/index.ts';
import { nearestAtMost, type ReachableLoad, type ReachableLoads } from '../equipment/index.ts';
import { type Load, scaleLoad } from '../load/index.ts';
import { NINE_IN_TEN } from '../recovery/nineInTen.ts';
import { type Caution, type StopRule, stopRules } from '../safety/index.ts';
import { generalCurve, type RepCurve, shareForReps, strengthDrift } from '../strength/index.ts';
import { afterIllness } from './review/afterIllness.ts';

/** What was done before a break, and how long it was. */
export interface ComebackQuestion {
  /** The sets before the break. */
  readonly old: { readonly load: Load; readonly reps: number };
  /** Days without the exercise, 0 or more. */
  readonly layoffDays: number;
  readonly loads: ReachableLoads;
  readonly curve?: RepCurve;
  /** A fever or a chest infection was the reason, or lay in between. */
  readonly illness?: boolean;
}

/** How to begin again. */
export interface Comeback {
  readonly kind: 'comeback';
  /** Share of the old strength that is likely left. */
  readonly strengthKept: Band;
  /** The load that follows from it, before the gym rounds it. */
  readonly ideal: Load;
  readonly start: ReachableLoad;
  /** Repetitions as before the break, with so many left: never to failure in the first week. */
  readonly reps: number;
  readonly repsInReserve: number;
  /** Share of the old number of sets in the first week. */
  readonly setsShare: number;
  /** A load for each week from the first on, up to the old one: a guide, not a goal. */
  readonly weeks: readonly ReachableLoad[];
  readonly says: string;
  readonly cautions: readonly Caution[];
  readonly watchFor: readonly StopRule[];
  readonly sources: readonly Source[];
}

/** The lightest load here is heavier than a start should be, or there is none. */
export interface NoComebackLoad {
  readonly kind: 'no-load';
  readonly ideal: Load;
  readonly message: string;
}

/** A short break costs nothing but the edge; after a long one more is left in every set. */
const RESERVE = { short: 2, long: 3 };
/** Longest step up from week to week. */
const WEEKLY_STEP = 1.1;
const MOST_WEEKS = 26;

/**
 * Where to begin again after a break, and how to climb back.
 *
 * Strength kept is `exp(-0.35 (1 - exp(-(days - 14) / 100)))` after two weeks (`strengthDrift`), a
 * band because people differ; the start leaves two repetitions after a short break and three after
 * a longer one, by the rep curve. It is rounded down to what the gym has.
 *
 * @param question old repetitions 1 to 100; days 0 or more.
 * @returns a start that is never heavier after a longer break; `no-load` when nothing here is light
 * enough.
 * @throws RangeError outside these ranges.
 * @example
 * ```ts
 * import { reachableLoads } from '@windlass/core/equipment';
 * import { kg, toKg } from '@windlass/core/load';
 * import { comeback } from '@windlass/core/progress';
 * const loads = reachableLoads(
 *   { kind: 'barbell', id: 'bar', name: 'Bar', bar: { value: 20, unit: 'kg' } },
 *   { plates: [40, 20, 10, 5, 2.5].map((value) => ({ weight: { value, unit: 'kg' as const }, pieces: 2 })) },
 * );
 * const start = comeback({ old: { load: kg(100), reps: 5 }, layoffDays: 42, loads });
 * start.kind === 'comeback' && toKg(start.start.load); // 80
 * ```
 */
export function comeback(question: ComebackQuestion): Comeback | NoComebackLoad {
  const { old, layoffDays, loads, curve = generalCurve, illness = false } = question;
  requireNumber('comeback', 'old.load in steps', old.load, 1);
  requireNumber('comeback', 'old.reps', old.reps, 1, 100);
  requireNumber('comeback', 'layoffDays', layoffDays, 0);
  const { graceDays, most, scaleDays, doubt } = strengthDrift.layoff;
  const away = Math.max(0, layoffDays - graceDays);
  const loss = most * (1 - Math.exp(-away / scaleDays));
  const keptAt = (times: number) => Math.exp(-loss * (1 + times * NINE_IN_TEN * doubt));
  const strengthKept = { low: keptAt(1), likely: keptAt(0), high: keptAt(-1), level: 0.8 };
  const repsInReserve = away === 0 ? RESERVE.short : RESERVE.long;
  const eased = shareForReps(old.reps + repsInReserve, curve) / shareForReps(old.reps, curve);
  const ideal = scaleLoad(old.load, strengthKept.likely * eased);
  const start = atMost(loads, ideal);
  if (start === undefined) {
    return { kind: 'no-load', ideal, message: 'Nothing here is light enough to begin again with.' };
  }
  return {
    kind: 'comeback',
    strengthKept,
    ideal,
    start,
    reps: old.reps,
    repsInReserve,
    setsShare: away === 0 ? 0.75 : 0.5,
    weeks: weeksOf(loads, ideal, old.load, start),
    says:
      away === 0
        ? 'A break this short costs little strength: near the old load, with some repetitions left.'
        : 'Begin well below the old load, with three repetitions left and half the sets; the old load is a guide, not a goal.',
    cautions: illness ? [afterIllness] : [],
    watchFor: illness ? stopRules.filter(({ id }) => ILLNESS_SIGNS.includes(id)) : [],
    sources: strengthDrift.sources,
  };
}

const ILLNESS_SIGNS = ['chest-discomfort', 'fainting-or-dizziness', 'breathless-or-palpitations'];

function atMost(loads: ReachableLoads, target: Load): ReachableLoad | undefined {
  const choice = nearestAtMost(loads, target);
  return choice.kind === 'none' ? undefined : choice.chosen;
}

function weeksOf(
  loads: ReachableLoads,
  ideal: Load,
  old: Load,
  start: ReachableLoad,
): readonly ReachableLoad[] {
  const weeks = [start];
  let wanted = ideal;
  while (wanted < old && weeks.length < MOST_WEEKS) {
    wanted = Math.min(old, scaleLoad(wanted, WEEKLY_STEP)) as Load;
    const next = atMost(loads, wanted);
    if (next) weeks.push(next);
  }
  return weeks;
}
