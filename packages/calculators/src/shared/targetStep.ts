import type { PlateStock } from '@windlass/core/equipment';
import { addLoads, kg, type LoadValue, lb, loadFromValue, loadValue } from '@windlass/core/load';
import { nextMultiple } from '../ui/stepNumber.ts';

/**
 * The load one step up or down: what the smallest pair of plates in the load's own unit adds, in
 * whole steps from the empty bar. `null` where there is no such pair.
 */
export function targetStep(
  target: LoadValue,
  bar: LoadValue,
  plates: readonly PlateStock[],
  direction: 1 | -1,
): LoadValue | null {
  const { unit } = target;
  const pairs = plates.filter(({ weight, pieces }) => weight.unit === unit && pieces >= 2);
  if (pairs.length === 0) return null;
  const step = 2 * Math.min(...pairs.map(({ weight }) => weight.value));
  const start = bar.unit === unit ? bar.value : 0;
  const next = nextMultiple(target.value - start, step, direction, step - start, 1300);
  const from = unit === 'kg' ? kg(start) : lb(start);
  return loadValue(addLoads(from, loadFromValue({ value: Number(next), unit })), unit);
}
