import { requireNumber } from '../basis/index.ts';
import { nearestLoad, type ReachableLoad, type ReachableLoads } from '../equipment/index.ts';
import { type Load, scaleLoad } from '../load/index.ts';

/** An ordinary session, and what the gym has for a light one. */
export interface LightWeekQuestion {
  /** Sets of an ordinary session, 1 to 50. */
  readonly sets: number;
  readonly load: Load;
  readonly reps: number;
  readonly loads: ReachableLoads;
  /** How much lighter, in percent: 10 to 25; 15 when left out. */
  readonly percent?: number;
}

/** A session of a light week: the same movement, about half the work. */
export interface LightWeek {
  readonly kind: 'light-week';
  readonly sets: number;
  /** Share of the ordinary sets. */
  readonly setsShare: number;
  readonly load: ReachableLoad;
  /** Percent below the ordinary load. */
  readonly percent: number;
  readonly reps: number;
  /** At least so many are left. */
  readonly repsInReserve: number;
  readonly says: string;
}

/**
 * A light week: the movements stay, the load is 10 to 25 % lighter, the sets are about halved, and
 * nothing goes near failure.
 *
 * Where the gym has no load in that range the nearest one is taken and its percentage said. A single
 * set cannot be halved: it stays, short of failure. Log such sets with the tag `light`, so that
 * progression passes over them.
 *
 * @returns `no-load` when the gym has none.
 * @throws RangeError for numbers out of range.
 * @example
 * ```ts
 * import { reachableLoads } from '@windlass/core/equipment';
 * import { kg, toKg } from '@windlass/core/load';
 * import { lightWeek } from '@windlass/core/progress';
 * const loads = reachableLoads({
 *   kind: 'stack', id: 'row', name: 'Row', pulleyRatio: 1,
 *   first: { value: 5, unit: 'kg' }, rest: [{ weight: { value: 5, unit: 'kg' }, pieces: 15 }],
 * });
 * const week = lightWeek({ sets: 3, load: kg(60), reps: 8, loads });
 * week.kind === 'light-week' && [week.sets, toKg(week.load.load)]; // [2, 50]
 * ```
 */
export function lightWeek(question: LightWeekQuestion): LightWeek | { readonly kind: 'no-load' } {
  const { sets, load, reps, loads, percent = 15 } = question;
  requireNumber('lightWeek', 'sets', sets, 1, 50);
  requireNumber('lightWeek', 'load in steps', load, 1);
  requireNumber('lightWeek', 'reps', reps, 1, 200);
  requireNumber('lightWeek', 'percent', percent, 10, 25);
  const choice = nearestLoad(loads, scaleLoad(load, 100 - percent, 100));
  if (choice.kind === 'none') return { kind: 'no-load' };
  const kept = Math.max(1, Math.ceil(sets / 2));
  const lighter = (100 * (load - choice.chosen.load)) / load;
  return {
    kind: 'light-week',
    sets: kept,
    setsShare: kept / sets,
    load: choice.chosen,
    percent: lighter,
    reps,
    repsInReserve: 3,
    says:
      sets === 1
        ? 'One set cannot be halved: do it with the lighter load and stop with at least three left.'
        : `${kept} of ${sets} sets with the lighter load, each with at least three repetitions left.`,
  };
}
