import { applyVariant, type Exercise } from '../anatomy/index.ts';
import type { ExchangeReason, ExchangeSetting, Suggestion } from './Exchange.ts';
import { remarks } from './remarks.ts';
import { setUpsWithin } from './setUpsWithin.ts';

/** What a purpose adds to a suggestion: how well it serves, and why. */
export interface Fit {
  readonly score: number;
  readonly reasonsFor: readonly ExchangeReason[];
  readonly reasonsAgainst: readonly ExchangeReason[];
}

/**
 * Suggestions from candidates: each exercise once, in the set-up that ranks first, best first and
 * by id where two rank the same. A candidate that no set-up takes past the filters is not there.
 */
export function suggestionsFrom(
  candidates: readonly Exercise[],
  setting: ExchangeSetting,
  against: (exercise: Exercise) => readonly ExchangeReason[],
  fit: (exercise: Exercise) => Fit | undefined,
): readonly Suggestion[] {
  return candidates
    .toSorted((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap((candidate) => waysOf(candidate, setting, against, fit).slice(0, 1))
    .sort(byScore);
}

/** Every set-up of one exercise that passes with the fewest changes, best first, then as they are listed. */
export function waysOf(
  candidate: Exercise,
  setting: ExchangeSetting,
  against: (exercise: Exercise) => readonly ExchangeReason[],
  fit: (exercise: Exercise) => Fit | undefined,
): readonly Suggestion[] {
  return setUpsWithin(candidate, against)
    .flatMap(({ exercise, setUps }) => {
      const served = fit(exercise);
      if (!served) return [];
      const said = remarks(exercise, setUps, setting);
      const alsoPossible = exercise.variants.filter(
        (variant) =>
          !setUps.includes(variant) &&
          !variant.adds?.length &&
          against(applyVariant(exercise, variant)).length === 0,
      );
      return [
        {
          exercise: { ...exercise, variants: [] },
          setUps,
          alsoPossible,
          score: served.score + said.score,
          reasonsFor: [...served.reasonsFor, ...said.reasonsFor],
          reasonsAgainst: [...served.reasonsAgainst, ...said.reasonsAgainst],
        },
      ];
    })
    .sort(byScore);
}

function byScore(a: Suggestion, b: Suggestion): number {
  // Sums of the same shares in another order differ in the last bits: compare at 1e-9.
  return Math.round(b.score * 1e9) - Math.round(a.score * 1e9);
}
