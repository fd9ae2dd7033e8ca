import type { KeptLift, LiftPieces } from './LiftPieces.ts';
import { type Item, mostValue } from './mostValue.ts';
import { worth } from './worth.ts';

/**
 * What to keep of a session so that it takes no more than `seconds`, losing the least useful first.
 *
 * In this order, and nothing of a later kind as long as giving up all of the earlier kinds is
 * enough:
 * 1. light warm-up sets of lifts after the first, since the body is warm by then; as few as will do;
 * 2. what goes on past lifting failure, since it costs recovery and was not seen to build more;
 * 3. work sets after a lift's first, since the first gives most of what sets give (`setValue`);
 * 4. whole lifts, those first whose muscles other lifts train as well.
 *
 * So first the lifts are chosen that are worth most with one set each, then their further sets, then
 * what goes on past failure, then their warm-up sets, each exactly. The last lift stays, and so does what somebody has fixed.
 *
 * @returns the kept lifts in order; undefined when nothing useful fits.
 */
export function leastLoss(
  pieces: readonly LiftPieces[],
  seconds: number,
): readonly KeptLift[] | undefined {
  const lifts = mostValue(pieces.map(whole), seconds, (parts) =>
    worth(pieces.map(({ exercise }, at) => ({ exercise, sets: parts[at] ?? 0 }))),
  );
  const kept = pieces.filter((_, at) => (lifts?.[at] ?? 0) > 0);
  if (kept.length === 0) return undefined;
  const lean = kept.reduce((sum, { leanSeconds }) => sum + leanSeconds, 0);
  const further = kept.map(({ furtherSets }) => inOrder(furtherSets));
  const sets = mostValue(further, seconds - lean, (parts) =>
    worth(
      kept.map(({ exercise, leanSets }, at) => ({ exercise, sets: leanSets + (parts[at] ?? 0) })),
    ),
  );
  const withSets = further.reduce((sum, item, at) => sum + item.seconds(sets?.[at] ?? 0), lean);
  const light = kept.map(({ lightSteps }) => inOrder(lightSteps.toReversed()));
  const past = kept.map(({ chainSeconds }) => inOrder(chainSeconds > 0 ? [chainSeconds] : []));
  const chains = mostValue(past, seconds - withSets, count);
  const withChains = past.reduce(
    (sum, item, at) => sum + item.seconds(chains?.[at] ?? 0),
    withSets,
  );
  const steps = mostValue(light, seconds - withChains, count);
  return kept.map(({ lift, leanSets, lightSteps, chainSeconds }, at) => ({
    lift,
    sets: leanSets + (sets?.[at] ?? 0),
    skipSteps: lightSteps.length - (steps?.[at] ?? 0),
    skipChain: chainSeconds > 0 && chains?.[at] === 0,
  }));
}

function count(parts: readonly number[]): number {
  return parts.reduce((sum, part) => sum + part, 0);
}

/** A lift is there with its least or not at all. */
function whole({ leanSeconds, stays }: LiftPieces): Item {
  return { least: stays ? 1 : 0, most: 1, seconds: (parts) => parts * leanSeconds };
}

/** The first parts of a list are kept. */
function inOrder(parts: readonly number[]): Item {
  const seconds = (kept: number) => parts.slice(0, kept).reduce((sum, part) => sum + part, 0);
  return { least: 0, most: parts.length, seconds };
}
