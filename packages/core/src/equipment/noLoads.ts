import type { Equipment } from './Equipment.ts';
import type { NoLoads } from './Loading.ts';

/** More loads than this are not listed, and more ways to make them are not kept. */
export const MOST_LOADS = 100_000;

/** The answer when a stock makes more loads than are listed. */
export const TOO_MANY_LOADS: NoLoads = {
  kind: 'none',
  reason: 'too-many-loads',
  message: `These plates make more than ${MOST_LOADS} different loads. Ask for a smaller range, or leave out plates that nobody uses.`,
};

export const NOTHING_IN_STOCK: NoLoads = {
  kind: 'none',
  reason: 'nothing-in-stock',
  message: 'There is no weight in stock here. Add at least one.',
};

/** The answer when loads exist, but none where they were asked for. */
export function nothingInRange({ name }: Equipment): NoLoads {
  return {
    kind: 'none',
    reason: 'nothing-in-range',
    message: `${name} makes no load in the range that was asked for.`,
  };
}
