import type { LoadList } from '../equipment/index.ts';
import type { Load } from '../load/index.ts';

/**
 * The load that is moved when a piece of equipment shows a number, also one that it cannot make
 * today: on every kind of equipment the two are related by a straight line.
 *
 * `movedLoad` of `@windlass/core/progress` refuses a stack number that the machine cannot show,
 * since a log may mix machines; here the set names its machine, so a number from before an add-on
 * went missing is read off the line through those that it can show.
 *
 * A bar's total and the weight in one hand stay what they are, a stack number is divided by its
 * pulley ratio, added weight comes on top of the moved part of the body.
 */
export function loadBehindNumber(list: LoadList, shown: Load): Load {
  const [first] = list.loads;
  const last = list.loads.findLast((one) => one.shown !== first.shown);
  const slope = last ? (last.load - first.load) / (last.shown - first.shown) : 1;
  return Math.round(first.load + slope * (shown - first.shown)) as Load;
}
