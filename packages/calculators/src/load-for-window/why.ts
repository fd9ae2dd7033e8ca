import { kappaAtTempo, kappaBand, oneRepMaxKg } from '@windlass/core/strength';
import { formatTempo } from '@windlass/core/tempo';
import type { Why } from '../contract/Answer.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import type { WindowInput, WindowResult } from './compute.ts';

const BINDING = {
  'prior-only': 'No set binds the strength yet.',
  'floor-only':
    'No set went to failure, so the sets only say how strong the lifter is at least. One set to failure narrows this more than ten without.',
  'ceiling-only':
    'Only a failed lift is known, so the sets only say how strong the lifter is at most.',
  'both-sides': 'The sets bind the strength from both sides.',
} as const;

/** The rep curve and the pace law with the numbers of this lifter in them. */
export function whyLoad(input: WindowInput, { belief, answer, paceSeconds }: WindowResult): Why {
  const max = oneRepMaxKg(belief, 0.8, 'today');
  const kappa = kappaBand(belief);
  const atPace = kappaAtTempo(kappa.likely, paceSeconds).kappa.likely;
  const { asked, best } = answer;
  const percent = (share: number) => `${formatNumber(share * 100, 0)} %`;
  return {
    formula:
      'reps = 1 + κ · (1 − x) ÷ x^α, with κ = κ₃ · (seconds a rep ÷ 3)^−0.55 and x = load ÷ one-rep max',
    steps: [
      `One-rep max today: ${formatNumber(max.likely, 1)} kg, ${formatNumber(max.low, 1)} to ${formatNumber(max.high, 1)} in 8 of 10; κ₃ = ${formatNumber(kappa.likely, 0)}, α = ${formatNumber(belief.alpha)}.`,
      `${formatTempo(input.tempo)} is ${formatNumber(paceSeconds, 1)} s a rep: κ = ${formatNumber(kappa.likely, 0)} · (${formatNumber(paceSeconds, 1)} ÷ 3)^−0.55 = ${formatNumber(atPace, 1)}.`,
      `The middle of ${input.window.low} to ${input.window.high} reps asks for x = ${percent(asked.likely)} (${percent(asked.low)} to ${percent(asked.high)}): ${formatNumber(asked.likely * max.likely, 1)} kg.`,
      `Of the loads that can be made, this one has the best chance, ${percent(best.inside)}; ${percent(best.before)} end sooner, ${percent(best.beyond)} later.`,
    ],
    restsOn: `${BINDING[belief.binding]} Repeated sets differ by half a rep and more, people at one share of their max by a third; both are in the band. A fresh lifter is assumed.`,
  };
}
