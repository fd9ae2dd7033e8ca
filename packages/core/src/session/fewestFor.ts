/** Something that serves some of what is wanted, better with a higher score. */
export interface Candidate<Wish> {
  readonly trains: readonly Wish[];
  readonly score: number;
}

interface Choice<One> {
  readonly picks: readonly One[];
  readonly score: number;
}

/** Scores are sums of shares; differences below this are rounding. */
const SAME = 1e-9;

/**
 * As few candidates as serve every wish together, and of those the ones with the highest scores;
 * exactly, over all sets of wishes. Of equals, those that come first.
 *
 * @param wishes each served by some candidate, 16 at most.
 */
export function fewestFor<Wish, One extends Candidate<Wish>>(
  wishes: readonly Wish[],
  candidates: readonly One[],
): readonly One[] {
  const bits = (trains: readonly Wish[]) =>
    wishes.reduce((sum, wish, at) => sum | (trains.includes(wish) ? 1 << at : 0), 0);
  const bestOf = new Map<number, One>();
  for (const one of candidates) {
    const serves = bits(one.trains);
    if (one.score > (bestOf.get(serves)?.score ?? Number.NEGATIVE_INFINITY) + SAME) {
      bestOf.set(serves, one);
    }
  }
  const all = 2 ** wishes.length - 1;
  let found = new Map<number, Choice<One>>([[0, { picks: [], score: 0 }]]);
  while (!found.has(all) && found.size > 0) found = withOneMore(found, bestOf);
  return found.get(all)?.picks ?? [];
}

/** Every set of wishes that one candidate more serves, with the best way to it. */
function withOneMore<One extends { readonly score: number }>(
  found: ReadonlyMap<number, Choice<One>>,
  bestOf: ReadonlyMap<number, One>,
): Map<number, Choice<One>> {
  const next = new Map<number, Choice<One>>();
  for (const [served, { picks, score }] of found) {
    for (const [serves, one] of bestOf) {
      const both = served | serves;
      const together = score + one.score;
      if (both === served || together <= (next.get(both)?.score ?? Number.NEGATIVE_INFINITY) + SAME)
        continue;
      next.set(both, { picks: [...picks, one], score: together });
    }
  }
  return next;
}
