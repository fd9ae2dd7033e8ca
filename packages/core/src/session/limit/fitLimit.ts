import type { LaidOut } from '../layOut.ts';
import type { Dropped } from '../TimeLimit.ts';
import { droppedThings } from './droppedThings.ts';
import type { KeptLift, LiftPieces } from './LiftPieces.ts';
import { leastLoss } from './leastLoss.ts';
import { piecesOf } from './piecesOf.ts';
import { worth } from './worth.ts';

/** A session within the time, with what it lost; or how long the shortest one is. */
export type Fit =
  | { readonly kind: 'fits'; readonly laidOut: LaidOut; readonly dropped: readonly Dropped[] }
  | { readonly kind: 'too-short'; readonly leastMinutes: number };

/**
 * A session that takes no more than the minutes given, by dropping the least useful first
 * (`leastLoss`).
 *
 * What is dropped changes how tired the rest begins, so what is left is planned anew; where that
 * makes it longer than its parts were, a little more is dropped. Rests stay what they are.
 *
 * @param whole the session without a limit.
 * @param layOut plans what is kept.
 */
export function fitLimit(
  whole: LaidOut,
  minutesAtMost: number,
  layOut: (kept: readonly KeptLift[]) => LaidOut,
): Fit {
  const pieces = piecesOf(whole.lifts, whole.timeline);
  if (whole.minutes.total <= minutesAtMost) return { kind: 'fits', laidOut: whole, dropped: [] };
  let seconds = 60 * minutesAtMost;
  for (;;) {
    const kept = leastLoss(pieces, seconds);
    if (kept === undefined) break;
    const laidOut = layOut(kept);
    const over = laidOut.minutes.total - minutesAtMost;
    if (over <= 0) return { kind: 'fits', laidOut, dropped: droppedThings(pieces, kept) };
    seconds -= Math.max(1, 60 * over);
  }
  return shortest(pieces, minutesAtMost, layOut);
}

/** Planned by itself a lift may take another time than among the others: each is tried. */
function shortest(
  pieces: readonly LiftPieces[],
  minutesAtMost: number,
  layOut: (kept: readonly KeptLift[]) => LaidOut,
): Fit {
  const lean = ({ lift, leanSets, lightSteps }: LiftPieces): KeptLift => ({
    lift,
    sets: leanSets,
    skipSteps: lightSteps.length,
    skipChain: true,
  });
  const staying = pieces.filter(({ stays }) => stays);
  const alone = pieces
    .toSorted((a, b) => worth([{ ...b, sets: 1 }]) - worth([{ ...a, sets: 1 }]))
    .map((piece) => [lean(piece)]);
  let leastMinutes = Number.POSITIVE_INFINITY;
  for (const kept of staying.length > 0 ? [staying.map(lean)] : alone) {
    const laidOut = layOut(kept);
    if (laidOut.minutes.total <= minutesAtMost) {
      return { kind: 'fits', laidOut, dropped: droppedThings(pieces, kept) };
    }
    leastMinutes = Math.min(leastMinutes, laidOut.minutes.total);
  }
  return { kind: 'too-short', leastMinutes };
}
