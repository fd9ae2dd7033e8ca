import type { Comparison } from './Comparison.ts';
import { countOrders } from './comparisons/countOrders.ts';
import { heldLoads } from './comparisons/heldLoads.ts';
import { jointOrder } from './comparisons/jointOrder.ts';
import { laterSets } from './comparisons/laterSets.ts';
import { loadAtPace } from './comparisons/loadAtPace.ts';
import { loadDrops } from './comparisons/loadDrops.ts';
import { loweringStrength } from './comparisons/loweringStrength.ts';
import { paceOrders } from './comparisons/paceOrders.ts';
import { pairOrders } from './comparisons/pairOrders.ts';
import { pastFailure } from './comparisons/pastFailure.ts';
import { recoveryTimes } from './comparisons/recoveryTimes.ts';
import { repCurveShape } from './comparisons/repCurveShape.ts';
import { repeatedCounts } from './comparisons/repeatedCounts.ts';
import { repsLeft } from './comparisons/repsLeft.ts';
import { restBetweenSets } from './comparisons/restBetweenSets.ts';
import { restKinetics } from './comparisons/restKinetics.ts';
import { restOrders } from './comparisons/restOrders.ts';
import { setTotals } from './comparisons/setTotals.ts';
import { slowerReps } from './comparisons/slowerReps.ts';
import { slowSingles } from './comparisons/slowSingles.ts';
import { spreadBetweenPeople } from './comparisons/spreadBetweenPeople.ts';
import { startingCurves } from './comparisons/startingCurves.ts';
import { strengthGained } from './comparisons/strengthGained.ts';

/** Every comparison, in the order in which the report shows them. */
export const comparisons: readonly Comparison[] = [
  repCurveShape,
  startingCurves,
  spreadBetweenPeople,
  countOrders,
  repeatedCounts,
  repsLeft,
  strengthGained,
  slowerReps,
  paceOrders,
  slowSingles,
  loadAtPace,
  laterSets,
  setTotals,
  restBetweenSets,
  restOrders,
  restKinetics,
  loadDrops,
  pairOrders,
  heldLoads,
  jointOrder,
  loweringStrength,
  pastFailure,
  recoveryTimes,
];
