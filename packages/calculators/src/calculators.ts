import { barLoading } from './bar-loading/definition.ts';
import type { Calculator } from './contract/Calculator.ts';
import { loadForWindowCalculator } from './load-for-window/definition.ts';
import { tempoSeconds } from './tempo-seconds/definition.ts';
import { warmUpRamp } from './warm-up-ramp/definition.ts';

/** Every calculator, in the order they are shown. Nothing is registered anywhere else. */
export const calculators: readonly Calculator[] = [
  loadForWindowCalculator,
  warmUpRamp,
  barLoading,
  tempoSeconds,
];
