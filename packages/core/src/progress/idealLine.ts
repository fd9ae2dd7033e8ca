import { requireNumber } from '../basis/index.ts';
import {
  nearestAtMost,
  nearestLoad,
  type ReachableLoad,
  type ReachableLoads,
} from '../equipment/index.ts';
import { type Load, scaleLoad } from '../load/index.ts';
import { generalCurve, type RepCurve, repsAtShare, shareForReps } from '../strength/index.ts';

/** A plan that moves by a percentage, and what the gym has for it. */
export interface IdealLineQuestion {
  readonly start: Load;
  /** Repetitions that the plan wants with its load, 1 to 100. */
  readonly reps: number;
  /** Percent more each week, -20 to 20. */
  readonly weeklyPercent: number;
  /** 1 to 104. */
  readonly weeks: number;
  readonly loads: ReachableLoads;
  /** How the ideal load becomes one that the gym has. */
  readonly rounding: 'down' | 'nearest';
  readonly curve?: RepCurve;
}

/** One week of a plan that moves by a percentage. */
export interface IdealWeek {
  /** From 1. */
  readonly week: number;
  /** The line itself, carried from week to week unrounded. */
  readonly ideal: Load;
  /** What to load. */
  readonly load: ReachableLoad;
  /** Repetitions with it that ask for the same as the plan's with the ideal load. */
  readonly reps: number;
}

/**
 * A plan of so many percent a week on equipment with coarser steps: the ideal line goes on
 * unrounded, and only what is loaded is rounded, by the rule named. Weeks that repeat a load carry
 * more repetitions instead, so that something moves; weeks ahead of the line carry fewer.
 *
 * @returns one entry a week; `no-load` when the gym has nothing light enough.
 * @throws RangeError for numbers out of range.
 * @example
 * ```ts
 * import { reachableLoads } from '@windlass/core/equipment';
 * import { kg, toKg } from '@windlass/core/load';
 * import { idealLine } from '@windlass/core/progress';
 * const weights = [37.5, 40, 42.5, 45].map((value) => ({ weight: { value, unit: 'kg' as const }, pieces: 2 }));
 * const loads = reachableLoads({ kind: 'fixed', form: 'dumbbell', id: 'rack', name: 'Rack', weights });
 * const line = idealLine({ start: kg(40), reps: 8, weeklyPercent: 2.5, weeks: 3, loads, rounding: 'down' });
 * line.kind === 'line' && line.weeks.map(({ ideal }) => toKg(ideal)); // [41, 42.025, 43.075625]
 * line.kind === 'line' && line.weeks.map(({ load }) => toKg(load.load)); // [40, 40, 42.5]
 * ```
 */
export function idealLine(
  question: IdealLineQuestion,
): { readonly kind: 'line'; readonly weeks: readonly IdealWeek[] } | { readonly kind: 'no-load' } {
  const { start, reps, weeklyPercent, weeks, loads, rounding, curve = generalCurve } = question;
  requireNumber('idealLine', 'start in steps', start, 1);
  requireNumber('idealLine', 'reps', reps, 1, 100);
  requireNumber('idealLine', 'weeklyPercent', weeklyPercent, -20, 20);
  requireNumber('idealLine', 'weeks', weeks, 1, 104);
  const round = rounding === 'down' ? nearestAtMost : nearestLoad;
  const line: IdealWeek[] = [];
  let ideal = start;
  for (let week = 1; week <= weeks; week += 1) {
    ideal = scaleLoad(ideal, 100 + weeklyPercent, 100);
    const choice = round(loads, ideal);
    if (choice.kind === 'none') return { kind: 'no-load' };
    const { chosen } = choice;
    const share = Math.min(1, (chosen.load / ideal) * shareForReps(reps, curve));
    const equal = Math.max(1, Math.round(repsAtShare(share, curve)));
    line.push({ week, ideal, load: chosen, reps: equal });
  }
  return { kind: 'line', weeks: line };
}
