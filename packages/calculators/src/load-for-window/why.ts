import { kappaAtTempo, kappaBand, oneRepMaxKg } from '@windlass/core/strength';
import { formatTempo } from '@windlass/core/tempo';
import type { Why } from '../contract/Answer.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { words } from '../words.ts';
import type { WindowInput, WindowResult } from './compute.ts';
import { said } from './words.ts';

/** The rep curve and the pace law with the numbers of this lifter in them. */
export function whyLoad(input: WindowInput, { belief, answer, paceSeconds }: WindowResult): Why {
  const max = oneRepMaxKg(belief, 0.8, 'today');
  const kappa = kappaBand(belief);
  const atPace = kappaAtTempo(kappa.likely, paceSeconds).kappa.likely;
  const { asked, best } = answer;
  const percent = (share: number) => words.chance.percent(formatNumber(share * 100, 0));
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
        percent(asked.likely),
        percent(asked.low),
        percent(asked.high),
        one(asked.likely * max.likely),
      ),
      said.best(percent(best.inside), percent(best.before), percent(best.beyond)),
    ],
    restsOn: said.restsOn(said.binding[belief.binding]),
  };
}
