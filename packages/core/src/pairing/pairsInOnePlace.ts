import { type Exercise, hasStations, type MuscleId } from '../anatomy/index.ts';
import { pairRules } from './pairRules.ts';
import { targetShare } from './targetShare.ts';

/** An isolation exercise and a compound lift that are done at one spot. */
export interface PlacePair<Candidate> {
  readonly isolation: Candidate;
  readonly compound: Candidate;
}

type PlaceExercise = Pick<Exercise, 'id' | 'direct' | 'indirect' | 'span' | 'loads' | 'stations'>;

/**
 * Pairs for some muscles whose two lifts need the same load and the same station, or whose second
 * needs nothing but the floor: no way to walk between them.
 *
 * @param candidates exercises that the gym can do and the person may do.
 * @returns the pairs whose compound lift is most for the target first; empty when there is none.
 * @example
 * ```ts
 * import { pairsInOnePlace } from '@windlass/core/pairing';
 * const fly = { id: 'dumbbell-fly', direct: { chest: 0.8 }, indirect: { 'front-deltoid': 0.2 }, span: 'isolation', loads: ['fixed'], stations: ['flat-bench'] } as const;
 * const press = { id: 'dumbbell-bench-press', direct: { chest: 0.6, 'front-deltoid': 0.2 }, indirect: { 'triceps-short-heads': 0.2 }, span: 'compound', loads: ['fixed'], stations: ['flat-bench'] } as const;
 * pairsInOnePlace(['chest'], [press, fly])[0]?.isolation.id; // 'dumbbell-fly'
 * ```
 */
export function pairsInOnePlace<Candidate extends PlaceExercise>(
  target: readonly MuscleId[],
  candidates: readonly Candidate[],
): readonly PlacePair<Candidate>[] {
  const forTarget = (span: Exercise['span'], least: number) =>
    candidates
      .filter((one) => one.span === span && targetShare(one, target, 'direct') >= least)
      .toSorted((a, b) => targetShare(b, target, 'direct') - targetShare(a, target, 'direct'));
  const isolations = forTarget('isolation', pairRules.isolationShare);
  return forTarget('compound', pairRules.compoundShare).flatMap((compound) =>
    isolations
      .filter((isolation) => inOnePlace(isolation, compound))
      .map((isolation) => ({ isolation, compound })),
  );
}

function inOnePlace(isolation: PlaceExercise, compound: PlaceExercise): boolean {
  if (!hasStations(isolation.stations, compound.stations)) return false;
  if (compound.loads.includes('body')) return true;
  return compound.loads.some((load) => isolation.loads.includes(load));
}
