import type { JoinIntent } from './Intent.ts';

/** One lift of a round. */
export interface RoundSet {
  /** How long its set takes. */
  readonly seconds: number;
  /** The rest that is wanted between its sets. */
  readonly restSeconds: number;
}

/**
 * Seconds from the end of a round to the beginning of the next, so that no rest is shorter than
 * wanted.
 *
 * In a pair both lifts work the same muscle, so the second one's rest is rest from both. In turn
 * they work different muscles, so the other one's set is rest as well.
 *
 * @param first its set in this round; none where its sets are done.
 * @param second likewise.
 */
export function roundWait(
  { kind, transitionSeconds }: JoinIntent,
  first: RoundSet | undefined,
  second: RoundSet | undefined,
): number {
  if (!first) return second?.restSeconds ?? 0;
  if (!second) return first.restSeconds;
  const firstRest = first.restSeconds - transitionSeconds - second.seconds;
  const secondRest =
    kind === 'pair' ? second.restSeconds : second.restSeconds - first.seconds - transitionSeconds;
  return Math.max(transitionSeconds, firstRest, secondRest);
}
