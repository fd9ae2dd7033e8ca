import { loadFromValue, scaleLoad } from '@windlass/core/load';
import { findingRules, kappaAtTempo, oneRepMaxKg, windowShares } from '@windlass/core/strength';
import type { Why } from '../contract/Answer.ts';
import { loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import { type FirstLoadResult, reportOf } from './compute.ts';
import type { FirstLoadInput } from './fields.ts';
import { said } from './words.ts';

/** The rule of the search with the last report in it. */
export function whyOf(input: FirstLoadInput, { step, question }: FirstLoadResult): Why {
  const { window, curve, secondsPerRep } = question;
  const atPace = kappaAtTempo(curve.kappa, secondsPerRep).kappa.likely;
  const shares = windowShares(window, { kappa: atPace, alpha: curve.alpha });
  return {
    formula: said.formula,
    steps: [
      lastReport(input),
      ...(step.kind === 'try' ? [said.because[step.because]] : [maxWords(step.posterior)]),
      said.window(
        window.minReps,
        window.maxReps,
        formatNumber(secondsPerRep, 1),
        formatPercent(shares.lightest),
        formatPercent(shares.heaviest),
      ),
    ],
    restsOn: said.restsOn,
  };
}

function lastReport({ tries, show }: FirstLoadInput): string {
  const last = tries.at(-1);
  if (last === undefined) return said.none;
  const load = loadFromValue(last.load);
  const report = reportOf(last.felt);
  if (report === 'failed' || report === 'form-broke') return said.downFrom(loadWords(load, show));
  const left = report === 'far-too-easy' ? findingRules.farTooEasy : report.repsLeft;
  const factor = findingRules.steps.find(({ fromLeft }) => left >= fromLeft)?.factor ?? 1;
  return said.allowed(
    loadWords(load, show),
    formatNumber(factor),
    loadWords(scaleLoad(load, factor), show),
  );
}

function maxWords(posterior: Parameters<typeof oneRepMaxKg>[0]): string {
  const { low, high } = oneRepMaxKg(posterior, 0.8, 'today');
  return said.max(formatNumber(low, 0), formatNumber(high, 0));
}
