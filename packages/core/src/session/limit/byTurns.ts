import type { JoinIntent } from '../Intent.ts';
import type { LaidOut } from '../layOut.ts';
import type { SettledLift, UnsettledLift } from '../settleLift.ts';
import type { TurnsInstead } from '../TimeLimit.ts';

type Wanted = SettledLift | UnsettledLift;

/** Time to step over to a neighbour and begin: a convention. */
const TRANSITION_SECONDS = 30;

/**
 * What doing neighbouring lifts by turns would save, as one rests while the other works: no set and
 * no rest is lost for it. Nothing where no two neighbours are for different muscles.
 *
 * @param layOut plans the lifts.
 */
export function byTurns(
  lifts: readonly Wanted[],
  minutesAtMost: number,
  layOut: (lifts: readonly Wanted[]) => LaidOut,
): TurnsInstead | undefined {
  const pairs: (readonly [number, number])[] = [];
  for (let at = 0; at + 1 < lifts.length; at += 1) {
    if (!canTurn(lifts[at - 1], lifts[at], lifts[at + 1])) continue;
    pairs.push([at, at + 1]);
    at += 1;
  }
  if (pairs.length === 0) return undefined;
  const firsts = new Set(pairs.map(([first]) => first));
  const laidOut = layOut(lifts.map((one, at) => (firsts.has(at) ? joined(one) : one)));
  const minutes = laidOut.minutes.total;
  const done = pairs.filter(([first]) => {
    const plan = laidOut.lifts[first];
    return plan?.kind === 'planned' && plan.join !== undefined;
  });
  if (done.length === 0) return undefined;
  const names = done.map((pair) => pair.map((at) => nameOf(lifts[at])).join(' and '));
  const fits =
    minutes <= minutesAtMost ? 'and nothing would be left out' : 'which is still too long';
  return {
    lifts: done,
    minutes,
    message: `By turns, ${TRANSITION_SECONDS} s between: ${names.join('; ')}. The session would take ${Math.ceil(minutes)} minutes with every rest as long as before, ${fits}.`,
  };
}

function canTurn(
  before: Wanted | undefined,
  first: Wanted | undefined,
  second: Wanted | undefined,
) {
  if (first?.kind !== 'settled' || second?.kind !== 'settled') return false;
  const isJoined = [before, first, second].some(
    (one) => one?.kind === 'settled' && one.lift.intent.join !== undefined,
  );
  const movers = Object.keys(first.lift.exercise.direct);
  return !isJoined && movers.every((muscle) => !(muscle in second.lift.exercise.direct));
}

function joined(one: Wanted): Wanted {
  if (one.kind !== 'settled') return one;
  const join: JoinIntent = { kind: 'in-turn', transitionSeconds: TRANSITION_SECONDS };
  return { ...one, lift: { ...one.lift, intent: { ...one.lift.intent, join } } };
}

function nameOf(one: Wanted | undefined): string {
  return one?.kind === 'settled' ? one.lift.exercise.name : '';
}
