import { repCost, repsUntil } from '@windlass/core/capacity';
import { kappaAtTempo, kappaBand } from '@windlass/core/strength';
import { CapacityChart } from '../ui/CapacityChart.tsx';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import type { WindowResult } from './compute.ts';
import { said } from './words.ts';

/** Capacity over the set with the best load, between the least and the most enduring that is believed. */
export function SetCapacity({ result }: { readonly result: WindowResult }) {
  const { belief, answer, paceSeconds } = result;
  const { share } = answer.best;
  const asked = Math.min(1, share.likely);
  const kappa = kappaBand(belief);
  const costs = {
    low: costPerRep(kappa.low),
    likely: costPerRep(kappa.likely),
    high: costPerRep(kappa.high),
  };
  const reps = Math.max(1, repsUntil(1, asked, costs.high));
  const points = [0, reps].map((done) => ({
    seconds: done * paceSeconds,
    low: Math.max(0, 1 - done * costs.low),
    likely: Math.max(0, 1 - done * costs.likely),
    high: Math.max(0, 1 - done * costs.high),
  }));
  const likelySeconds = Math.max(0, repsUntil(1, asked, costs.likely)) * paceSeconds;
  return (
    <CapacityChart
      points={points}
      lines={[
        {
          label: said.asksThisMuch,
          low: Math.min(1, share.low),
          likely: asked,
          high: Math.min(1, share.high),
        },
      ]}
      says={said.capacity(formatPercent(asked), formatNumber(likelySeconds, 0))}
    />
  );

  function costPerRep(atThreeSeconds: number): number {
    const atPace = kappaAtTempo(atThreeSeconds, paceSeconds).kappa.likely;
    return repCost({ intensity: asked, kappa: atPace, alpha: belief.alpha });
  }
}
