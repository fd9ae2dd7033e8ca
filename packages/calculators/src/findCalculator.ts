import { calculators } from './calculators.ts';
import type { Calculator } from './contract/Calculator.ts';

/** The calculator with this id; `undefined` where there is none. */
export function findCalculator(id: string): Calculator | undefined {
  return calculators.find((calculator) => calculator.id === id);
}
