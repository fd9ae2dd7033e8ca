import { type Load, type LoadValue, STEPS_PER_KG, STEPS_PER_LB, type Unit } from './Load.ts';

/**
 * The value to write into a file or an address, in the unit asked for where that unit can hold
 * the load exactly, otherwise in kilograms, which always can.
 *
 * So {@link loadFromValue} always gives the same load back. A pound value is exact when it has at
 * most 3 decimals: 45 lb stays 45 lb, but 20 kg asked for in pounds (44.092...) stays 20 kg. To
 * show any load in any unit, use {@link formatLoad}; to compute with decimals, {@link toLb}.
 *
 * @example
 * ```ts
 * import { kg, lb, loadValue } from '@windlass/core/load';
 * loadValue(lb(45), 'lb'); // { value: 45, unit: 'lb' }
 * loadValue(kg(20), 'lb'); // { value: 20, unit: 'kg' }
 * ```
 */
export function loadValue(load: Load, unit: Unit): LoadValue {
  const stepsPerThousandth = STEPS_PER_LB / 1000;
  return unit === 'lb' && load % stepsPerThousandth === 0
    ? { value: load / STEPS_PER_LB, unit: 'lb' }
    : { value: load / STEPS_PER_KG, unit: 'kg' };
}
