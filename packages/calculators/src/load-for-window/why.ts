import { kappaAtTempo, kappaBand, oneRepMaxKg } from '@windlass/core/strength';
import { formatTempo } from '@windlass/core/tempo';
import type { Why } from '../contract/Answer.ts';
import { formatChance } from '../ui/formatChance.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import type { WindowInput, WindowResult } from './compute.ts';
import { said } from './words.ts';

/** The rep curve and the pace law with the numbers of this lifter in them. */
export function whyLoad(input: WindowInput, { belief, answer, paceSeconds }: WindowResult): Why {
  const max = oneRepMaxKg(belief, 0.8, 'today');
  const kappa = kappaBand(belief);
  const atPace = kappaAtTempo(kappa.likely, paceSeconds).kappa.likely;
  const { asked, best } = answer;
  const one = (value: number) => formatNumber(value, 1);
  const { window, tempo } = input;
  return {
    formula: said.formula,
    steps: [
      said.max(
        one(max.likely),
        one(max.low),
        one(max.high),
        formatNumber(kappa.likely, 0),
        formatNumber(belief.alpha),
      ),
      said.pace(formatTempo(tempo), one(paceSeconds), formatNumber(kappa.likely, 0), one(atPace)),
      said.asks(
        window.low,
        window.high,
        formatPercent(asked.likely),
        formatPercent(asked.low),
        formatPercent(asked.high),
        one(asked.likely * max.likely),
      ),
      said.best(formatChance(best.inside), formatChance(best.before), formatChance(best.beyond)),
    ],
    restsOn: said.restsOn(said.binding[belief.binding]),
  };
}
