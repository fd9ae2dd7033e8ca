import type { MuscleId } from '../anatomy/index.ts';
import { type CapacityState, capacityFor } from '../capacity/index.ts';
import type { PairInput, PairRefusal } from './Pair.ts';
import { pairRules } from './pairRules.ts';
import { pairPractice } from './pairSources.ts';
import { targetShare } from './targetShare.ts';

/**
 * Why a pair would not do what it is for: its exercises miss the target, or a helper of the
 * compound lift would give out before the target.
 *
 * @param atCompound the state at the first repetition of the compound lift.
 */
export function pairRefusals(
  { target, limiting = [], isolation, compound }: PairInput,
  atCompound: CapacityState,
): readonly PairRefusal[] {
  const first = isolation.exercise;
  const second = compound.exercise;
  const refusals: PairRefusal[] = [];
  const refuse = (code: string, why: string, instead: string) =>
    refusals.push({ code: `pairing.${code}`, why, instead, sources: [pairPractice] });
  if (
    first.span !== 'isolation' ||
    targetShare(first, target, 'direct') < pairRules.isolationShare
  ) {
    refuse(
      'isolation-misses-target',
      `${first.name} does not tire ${named(target)} by itself.`,
      `Take an isolation exercise that is mostly for ${named(target)}.`,
    );
  }
  if (
    second.span !== 'compound' ||
    targetShare(second, target, 'direct') < pairRules.compoundShare
  ) {
    refuse(
      'compound-misses-target',
      `${second.name} is no compound lift for ${named(target)}.`,
      `Take a compound lift in which ${named(target)} does a large part.`,
    );
  }
  const loaded = limiting.filter(
    (muscle) => targetShare(first, [muscle], 'all') > pairRules.limitingShare,
  );
  if (loaded.length > 0) {
    refuse(
      'loads-the-limit',
      `${first.name} also tires ${named(loaded)}, which gives out first on ${second.name} already.`,
      'Take an isolation exercise that leaves it alone.',
    );
  }
  const spent = helpersOf(second, target).filter(
    (muscle) => capacityFor(atCompound, { [muscle]: 1 }) < pairRules.spentBelow,
  );
  if (spent.length > 0) {
    const left = Math.min(...spent.map((muscle) => capacityFor(atCompound, { [muscle]: 1 })));
    refuse(
      'helper-spent',
      `Of its strength, ${named(spent)} would have ${Math.round(Math.max(0, left) * 100)} % left at the first repetition of ${second.name}, and would end the set before ${named(target)} does.`,
      'Do the pair before other work for that muscle, or rest longer before it.',
    );
  }
  return refusals;
}

/** Muscles outside the target that do enough of a lift to end it. */
function helpersOf(
  { direct, indirect }: PairInput['compound']['exercise'],
  target: readonly MuscleId[],
): readonly MuscleId[] {
  return (Object.entries({ ...direct, ...indirect }) as [MuscleId, number][])
    .filter(([muscle, share]) => share >= pairRules.helperShare && !target.includes(muscle))
    .map(([muscle]) => muscle);
}

function named(ids: readonly MuscleId[]): string {
  return ids.map((id) => id.replaceAll('-', ' ')).join(' and ');
}
