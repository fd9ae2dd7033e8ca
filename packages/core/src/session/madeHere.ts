import type { ReachableLoad } from '../equipment/index.ts';
import { formatLoad, type LoadValue, loadFromValue } from '../load/index.ts';
import type { Refusal } from './LiftPlan.ts';
import type { Lift } from './liftOf.ts';

/** What the equipment makes for a number that is counted up or read off, or what is nearest to it. */
export function madeHere(
  { loads: { loads }, equipment }: Lift,
  asked: LoadValue,
): ReachableLoad | Refusal {
  const shown = loadFromValue(asked);
  const made = loads.find((one) => one.shown === shown);
  if (made) return made;
  const below = loads.findLast((one) => one.shown < shown);
  const above = loads.find((one) => one.shown > shown);
  const nearest = [below, above]
    .flatMap((one) => (one ? [formatLoad(one.shown, { unit: asked.unit })] : []))
    .join(' and ');
  return {
    what: 'load',
    code: 'session.load-not-here',
    message: `${equipment.name} does not make ${formatLoad(shown, { unit: asked.unit })} here. Nearest to it: ${nearest}.`,
  };
}
