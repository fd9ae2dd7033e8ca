import { repCost } from '@windlass/core/capacity';
import { loadFromValue } from '@windlass/core/load';
import { enduranceCurves, kappaAtTempo } from '@windlass/core/strength';
import type { Why } from '../contract/Answer.ts';
import { loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import { below } from './below/words.ts';
import type { ChainResult } from './compute.ts';
import type { ChainInput } from './fields.ts';
import { said } from './words.ts';

/** The lines that the strength left crosses, with the numbers of this set in them. */
export function whyChain(input: ChainInput, result: ChainResult): Why {
  const { exercise, intensity, paceSeconds, trace, stages, forecast } = result;
  const curve = enduranceCurves[exercise.endurance];
  const kappa = kappaAtTempo(curve.kappa, paceSeconds).kappa.likely;
  const cost = repCost({ intensity, kappa, alpha: curve.alpha });
  const kinds = stages.map(({ kind }) => kind);
  return {
    formula: below.formula,
    steps: [
      shareWords(input, intensity),
      below.lifting(formatPercent(cost, 1), formatNumber(paceSeconds, 1)),
      ...trace.lines.flatMap(({ id, capacity: { low, likely, high } }) =>
        id !== 'lift' && kinds.includes(id)
          ? [below.line(id, formatPercent(likely), formatPercent(low), formatPercent(high))]
          : [],
      ),
      below.lifters,
    ],
    restsOn: forecast.notes.join(' ') || said.between,
  };
}

function shareWords({ heaviness, load, max }: ChainInput, intensity: number): string {
  if (heaviness === 'share') return below.shareGiven(formatPercent(intensity));
  const inUnit = (value: typeof load) => loadWords(loadFromValue(value), value.unit);
  return below.share(inUnit(load), inUnit(max), formatPercent(intensity));
}
