import { bodyLoad, type MovedShare, type ReachableLoads } from '../equipment/index.ts';
import { type Load, loadFromValue, scaleLoad } from '../load/index.ts';
import type { LoggedSet } from './LoggedSet.ts';

/** Who lifted, where the body counts. */
export interface MovedLoadContext {
  /** For sets that were logged without it. */
  readonly bodyWeight?: Load;
  /** Of the exercise; the whole body when left out. */
  readonly movedShare?: MovedShare;
  /** What the machine can make, where its number is not what is moved: a pulley, a lever, a start. */
  readonly machine?: ReachableLoads;
}

/** What had to be moved, or why nobody can say. */
export type MovedLoad =
  | {
      readonly kind: 'load';
      readonly load: Load;
      /** All that was moved together: both hands where `load` is that of one. */
      readonly total: Load;
    }
  /** The set was done with the body, whose weight is not given. */
  | { readonly kind: 'body-weight-not-given' }
  /** The help took off as much as the body weighs. */
  | { readonly kind: 'nothing-moved' }
  /** A number that the machine cannot show, so from another one. */
  | { readonly kind: 'not-of-this-machine' };

/**
 * What had to be moved in a logged set, as rep curves and steps count it: the number itself, or for
 * `added` the moved body with it. `each-hand` stays the weight of one hand. Stack numbers and plates
 * are turned into what the machine makes of them where it is given; otherwise they stay what they
 * are, and compare on their own machine only.
 *
 * @example
 * ```ts
 * import { kg, toKg } from '@windlass/core/load';
 * import { movedLoad } from '@windlass/core/progress';
 * const load = { value: -20, unit: 'kg' } as const;
 * const set = { date: '2026-03-02', exercise: 'chin-up', set: 1, load, counts: 'added', reps: 8 } as const;
 * const moved = movedLoad(set, { bodyWeight: kg(74) });
 * moved.kind === 'load' && toKg(moved.load); // 54
 * ```
 */
export function movedLoad(set: LoggedSet, context: MovedLoadContext = {}): MovedLoad {
  const load = loadFromValue(set.load);
  const { machine } = context;
  if (machine?.kind === 'loads' && machine.counts === set.counts && set.counts !== 'added') {
    const made = machine.loads.find(({ shown }) => shown === load);
    if (made === undefined && set.counts !== 'total' && set.counts !== 'each-hand') {
      return { kind: 'not-of-this-machine' };
    }
    if (made) return { kind: 'load', load: made.load, total: totalOf(set, made.load) };
  }
  if (set.counts !== 'added') {
    return load > 0 ? { kind: 'load', load, total: totalOf(set, load) } : { kind: 'nothing-moved' };
  }
  const bodyWeight = set.bodyWeight ? loadFromValue(set.bodyWeight) : context.bodyWeight;
  if (bodyWeight === undefined) return { kind: 'body-weight-not-given' };
  const body = bodyLoad(bodyWeight, load, context.movedShare);
  return body.kind === 'load'
    ? { kind: 'load', load: body.load, total: body.load }
    : { kind: 'nothing-moved' };
}

function totalOf({ counts, side, hands = 2 }: LoggedSet, load: Load): Load {
  return counts === 'each-hand' && side === undefined ? scaleLoad(load, hands) : load;
}
