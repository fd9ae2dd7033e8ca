import { toKg } from '@windlass/core/load';
import {
  evidenceModel,
  kappaAtTempo,
  kappaBand,
  type PerformedSet,
  shareForReps,
} from '@windlass/core/strength';
import type { Why } from '../contract/Answer.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import type { StrengthResult } from './compute.ts';
import type { StrengthInput } from './fields.ts';
import { kgWords, setName } from './names.ts';
import { said } from './words.ts';

/** The rep curve with the newest set in it, then all sets together. */
export function whyOf(input: StrengthInput, result: StrengthResult): Why {
  const { sets, belief, max } = result;
  const kappa = kappaBand(belief);
  const newest = sets.at(-1);
  return {
    formula: said.formula,
    steps: [
      ...(newest ? [newestStep(newest, kappa.likely, input, belief.alpha)] : []),
      said.together(
        sets.length,
        kgWords(max.low, input, 1),
        kgWords(max.likely, input, 1),
        kgWords(max.high, input, 1),
      ),
      said.kappa(
        formatNumber(kappa.low, 0),
        formatNumber(kappa.likely, 0),
        formatNumber(kappa.high, 0),
        formatNumber(belief.alpha),
      ),
    ],
    restsOn: said.restsOn,
  };
}

function newestStep(set: PerformedSet, kappa: number, input: StrengthInput, alpha: number): string {
  const atPace = kappaAtTempo(kappa, set.secondsPerRep ?? 3).kappa.likely;
  const reps = Math.max(1, set.reps + leftAfter(set));
  const share = shareForReps(reps, { kappa: atPace, alpha });
  const kg = toKg(set.load);
  return said.newest(
    setName(set, input),
    formatNumber(reps, 1),
    formatPercent(share),
    kgWords(kg, input, 1),
    kgWords(kg / share, input, 1),
  );
}

/** Reps that were left, with the one that people leave out of it. */
function leftAfter({ end }: PerformedSet): number {
  if (end.kind === 'failure') return 0;
  return end.kind === 'more' ? end.atLeast : end.repsLeft + evidenceModel.reserve.value.bias;
}
