import type { JoinIntent } from './Intent.ts';

/** One lift of a round. */
export interface RoundSet {
  /** How long a set of it takes: for the first lift the next one counts, for the second this one. */
  readonly seconds: number;
  /** The rest that is wanted between its sets. */
  readonly restSeconds: number;
  /** Another set of it follows in the next round. */
  readonly goesOn: boolean;
}

/**
 * Seconds from the end of a round to the beginning of the next, so that no rest between two sets of
 * a lift is shorter than wanted.
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
  const waits = [0];
  if (first?.goesOn) {
    const since = second ? transitionSeconds + second.seconds : 0;
    waits.push(first.restSeconds - since);
    if (second) waits.push(transitionSeconds);
  }
  if (second?.goesOn) {
    const ahead = kind === 'in-turn' && first?.goesOn ? first.seconds + transitionSeconds : 0;
    waits.push(second.restSeconds - ahead);
  }
  return Math.max(...waits);
}
