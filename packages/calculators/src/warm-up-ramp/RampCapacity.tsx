import { type CapacityStep, capacityTrace, repCost } from '@windlass/core/capacity';
import { generalCurve, kappaAtTempo } from '@windlass/core/strength';
import { kappaOfPeople } from '../shared/kappaOfPeople.ts';
import { CapacityChart } from '../ui/CapacityChart.tsx';
import { formatPercent } from '../ui/formatPercent.ts';
import type { RampResult } from './compute.ts';
import { said } from './words.ts';

const ALL_AS_ONE = { lift: 1 };

/** Capacity through the sets and rests of the ramp, for the least and the most enduring of 8 in 10. */
export function RampCapacity({ result }: { readonly result: RampResult }) {
  const people = kappaOfPeople(generalCurve);
  const [low, likely, high] = [people.low, people.likely, people.high].map((kappa) =>
    traceOf(result, kappa),
  );
  const points = (likely ?? []).map(({ seconds, capacity }, at) => ({
    seconds,
    low: low?.[at]?.capacity ?? capacity,
    likely: capacity,
    high: high?.[at]?.capacity ?? capacity,
  }));
  const share = result.workShare;
  const left = points.at(-1)?.likely ?? 1;
  return (
    <CapacityChart
      points={points}
      lines={[{ label: said.asksThisMuch, low: share, likely: share, high: share }]}
      says={said.capacity(formatPercent(left), formatPercent(share))}
    />
  );
}

function traceOf({ plan, workShare }: RampResult, kappa: number) {
  const steps = plan.steps.flatMap(({ reps, seconds, shareOfWork, restSeconds }) => {
    const secondsPerRep = seconds / reps;
    const atPace = kappaAtTempo(kappa, secondsPerRep).kappa.likely;
    const intensity = shareOfWork * workShare;
    const costPerRep = repCost({ intensity, kappa: atPace, alpha: generalCurve.alpha });
    return [
      { kind: 'reps', shares: ALL_AS_ONE, reps, secondsPerRep, costPerRep },
      { kind: 'rest', seconds: restSeconds },
    ] satisfies readonly CapacityStep[];
  });
  return capacityTrace({ shares: ALL_AS_ONE, steps }).points;
}
