/** Something of which a number of parts is kept. */
export interface Item {
  readonly least: number;
  readonly most: number;
  /** How long so many parts take; more parts, more seconds. */
  readonly seconds: (parts: number) => number;
}

/** As many combinations are all tried; above it parts are given up one at a time. */
const MOST_COMBINATIONS = 50_000;
/** Values are sums of a few hundredths; differences below this are rounding. */
const SAME = 1e-9;

/**
 * How many parts of each item to keep so that they are worth most and take no more than `seconds`:
 * exactly, by trying all combinations that could be better. Of equals, the earlier items keep more.
 * Above 50,000 combinations, which no real session has, the part is given up again and again that
 * loses least.
 *
 * @param value of a combination; never falls as parts are added.
 * @returns parts kept, one number an item; undefined when not even the least fits.
 */
export function mostValue(
  items: readonly Item[],
  seconds: number,
  value: (parts: readonly number[]) => number,
): readonly number[] | undefined {
  const leastTotal = total(
    items,
    items.map(({ least }) => least),
  );
  if (leastTotal > seconds) return undefined;
  const combinations = items.reduce((product, { least, most }) => product * (most - least + 1), 1);
  return combinations > MOST_COMBINATIONS
    ? givingUp(items, seconds, value)
    : tryingAll(items, seconds, value);
}

function tryingAll(
  items: readonly Item[],
  seconds: number,
  value: (parts: readonly number[]) => number,
): readonly number[] | undefined {
  const parts = items.map(({ most }) => most);
  let best: readonly number[] | undefined;
  let bestValue = Number.NEGATIVE_INFINITY;
  const place = (at: number, used: number): void => {
    if (value(parts) <= bestValue + SAME) return;
    const item = items[at];
    if (item === undefined) {
      best = [...parts];
      bestValue = value(parts);
      return;
    }
    for (let kept = item.most; kept >= item.least; kept -= 1) {
      const longer = used + item.seconds(kept);
      if (longer > seconds) continue;
      parts[at] = kept;
      place(at + 1, longer);
    }
    parts[at] = item.most;
  };
  place(0, 0);
  return best;
}

function givingUp(
  items: readonly Item[],
  seconds: number,
  value: (parts: readonly number[]) => number,
): readonly number[] {
  let parts = items.map(({ most }) => most);
  while (total(items, parts) > seconds) {
    const fewer = items.flatMap((item, at) =>
      (parts[at] ?? 0) > item.least ? [parts.with(at, (parts[at] ?? 0) - 1)] : [],
    );
    parts = fewer.reduce((best, one) => (value(one) >= value(best) - SAME ? one : best));
  }
  return parts;
}

function total(items: readonly Item[], parts: readonly number[]): number {
  return items.reduce((sum, item, at) => sum + item.seconds(parts[at] ?? 0), 0);
}
