import { barLoading } from './bar-loading/definition.ts';
import { calendar } from './calendar/definition.ts';
import { compareEquationsCalculator } from './compare-equations/definition.ts';
import type { Calculator } from './contract/Calculator.ts';
import { exchange } from './exchange/definition.ts';
import { firstLoad } from './first-load/definition.ts';
import { gymLoads } from './gym-loads/definition.ts';
import { loadForWindowCalculator } from './load-for-window/definition.ts';
import { logReview } from './log-review/definition.ts';
import { nextDate } from './next-date/definition.ts';
import { pair } from './pair/definition.ts';
import { pastFailure } from './past-failure/definition.ts';
import { strengthFromSets } from './strength-from-sets/definition.ts';
import { tempoSeconds } from './tempo-seconds/definition.ts';
import { warmUpRamp } from './warm-up-ramp/definition.ts';

/** Every calculator, in the order they are shown. Nothing is registered anywhere else. */
export const calculators: readonly Calculator[] = [
  loadForWindowCalculator,
  firstLoad,
  strengthFromSets,
  warmUpRamp,
  barLoading,
  gymLoads,
  pastFailure,
  pair,
  exchange,
  nextDate,
  calendar,
  logReview,
  compareEquationsCalculator,
  tempoSeconds,
];
