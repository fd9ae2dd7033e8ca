import { requireNumber } from '../basis/index.ts';
import { type Load, subtractLoad } from '../load/index.ts';
import type { LoadChoice } from './LoadChoice.ts';
import type { ReachableLoad, ReachableLoads } from './Loading.ts';
import { nearMessage, noChoice, nothingHeavier } from './nearReasons.ts';

/** The load itself where it is in the list, otherwise what `pick` makes of its two neighbours. */
export function chooseLoad(
  where: string,
  loads: ReachableLoads,
  target: Load,
  pick: (
    below: ReachableLoad | undefined,
    above: ReachableLoad | undefined,
  ) => ReachableLoad | undefined,
): LoadChoice {
  requireNumber(where, 'target in steps', target);
  if (loads.kind === 'none') return loads;
  const above = loads.loads.find(({ load }) => load >= target);
  if (above?.load === target) return { kind: 'exact', chosen: above };
  const below = loads.loads.findLast(({ load }) => load < target);
  const end = below === undefined ? 'lightest-is-heavier' : nothingHeavier(loads);
  const chosen = pick(below, above);
  if (chosen === undefined) return noChoice(end);
  const reason = below && above ? 'between-two-loads' : end;
  return {
    kind: 'near',
    chosen,
    difference: subtractLoad(chosen.load, target),
    reason,
    message: nearMessage(reason),
  };
}
