import { loadFromValue, toKg } from '@windlass/core/load';
import { kappaAtTempo, shareForReps } from '@windlass/core/strength';
import type { Why } from '../contract/Answer.ts';
import { loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import type { Answered, EquationsResult } from './compute.ts';
import type { EquationsInput } from './fields.ts';
import { said } from './words.ts';

/** The lowest and the highest equation with these numbers in them, and the own curve beside them. */
export function whyOf(input: EquationsInput, result: EquationsResult): Why {
  const { spread, set, curve, own } = result;
  const load = loadWords(loadFromValue(input.load), input.show);
  if (spread === null || own === null) {
    return { formula: said.formula, steps: [said.singleStep(load)], restsOn: said.restsOn };
  }
  const spoken = result.answered.filter(({ equation, place }) =>
    result.isInside ? place === 'inside' : equation.lift === undefined,
  );
  const ends = [spoken[0], spoken.at(-1)].flatMap((one) => (one ? [one] : []));
  const atPace = kappaAtTempo(curve.kappa, set.secondsPerRep ?? 3).kappa.likely;
  const share = shareForReps(input.reps, { kappa: atPace, alpha: curve.alpha });
  return {
    formula: said.formula,
    steps: [
      ...ends.map((one) => stepOf(one, toKg(set.load), input.reps)),
      said.ownStep(input.reps, formatPercent(share), load, formatNumber(toKg(set.load) / share, 1)),
    ],
    restsOn: said.restsOn,
  };
}

function stepOf({ equation, oneRepMaxKg }: Answered, kg: number, reps: number): string {
  const sum = equation.formula
    .replace(/\bw\b/g, formatNumber(kg, 2))
    .replace(/\br\b/g, String(reps))
    .replaceAll('*', '×')
    .replaceAll(' / ', ' ÷ ')
    .replaceAll('-', '−');
  return said.step(equation.name, sum, formatNumber(oneRepMaxKg, 1));
}
