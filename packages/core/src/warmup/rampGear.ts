import {
  type EquipmentNote,
  type NoLoads,
  type ReachableLoad,
  reachableLoads,
} from '../equipment/index.ts';
import { type Load, scaleLoad } from '../load/index.ts';
import type { RampImpossible, RampQuestion } from './Ramp.ts';
import { rampRules } from './rampRules.ts';
import { rampWays } from './rampWays.ts';
import { standsAtFullHeight } from './standsAtFullHeight.ts';

/** What the equipment offers to a ramp. */
export interface RampGear {
  readonly kind: 'gear';
  /** Loadings below the work load, lightest first. */
  readonly lighter: readonly ReachableLoad[];
  /** Loadings of the work load. */
  readonly workWays: readonly [ReachableLoad, ...ReachableLoad[]];
  /** Loadings just above the work load. */
  readonly above: readonly ReachableLoad[];
  readonly notes: readonly EquipmentNote[];
}

const RAISE_THE_BAR: EquipmentNote = {
  code: 'warmup.raise-the-bar',
  message:
    'These plates do not hold the bar at its usual height above the floor. Set it on blocks or other plates.',
};

/** The loadings around a work load, or why there are none. */
export function rampGear(question: RampQuestion): RampGear | RampImpossible | NoLoads {
  const { equipment, use = {}, work, fromFloor = false } = question;
  const heaviest = scaleLoad(work, 1 + rampRules.mostAboveWork);
  const ways = rampWays(equipment, use, question.aboveWork ? heaviest : work);
  if (!isList(ways)) return ways.reason === 'nothing-in-range' ? NOT_REACHABLE : ways;
  const list = reachableLoads(equipment, use, { lightest: work, heaviest: work });
  if (list.kind === 'none') return NOT_REACHABLE;
  const standing = fromFloor ? ways.filter(standsAtFullHeight) : ways;
  const canStand =
    standing.some(({ load }) => load === work) && standing.some(({ load }) => load < work);
  const usable = canStand ? standing : ways;
  const [first = list.loads[0], ...others] = usable.filter(({ load }) => load === work);
  return {
    kind: 'gear',
    lighter: stepsBelow(work, usable),
    workWays: [first, ...others],
    above: usable.filter(({ load }) => load > work),
    notes: [...list.notes, ...(fromFloor && usable !== standing ? [RAISE_THE_BAR] : [])],
  };
}

/** What a step may be made with: not all but the work load, as far as there is something lighter. */
function stepsBelow(work: Load, ways: readonly ReachableLoad[]): readonly ReachableLoad[] {
  const lighter = ways.filter(({ load }) => load < work);
  const heaviest = scaleLoad(work, rampRules.heaviestStepShare);
  const clear = lighter.filter(({ load }) => load <= heaviest);
  return clear.length > 0 ? clear : lighter;
}

const NOT_REACHABLE: RampImpossible = {
  kind: 'none',
  reason: 'work-load-not-reachable',
  message: 'This equipment cannot make the work load. Take the nearest load that it can make.',
};

function isList(ways: readonly ReachableLoad[] | NoLoads): ways is readonly ReachableLoad[] {
  return Array.isArray(ways);
}
