import { type MuscleId, muscles } from '../anatomy/index.ts';
import { inSentence } from '../basis/index.ts';
import type { JoinIntent } from './Intent.ts';
import type { KnownLift } from './knownLift.ts';
import type { Refusal } from './LiftPlan.ts';
import type { PairAnswer } from './pairEffect.ts';

const LONGEST_TRANSITION = 600;

/** Why two lifts are not done in rounds: a pair that would not do what it is for, or turns without rest. */
export function joinRefusals(
  first: KnownLift,
  second: KnownLift,
  { kind, transitionSeconds }: JoinIntent,
  pair: PairAnswer | undefined,
): readonly Refusal[] {
  if (transitionSeconds < 0 || transitionSeconds > LONGEST_TRANSITION) {
    const message = `Give the seconds between two joined lifts as a number from 0 to ${LONGEST_TRANSITION}.`;
    return [{ what: 'join', code: 'session.join-transition', message }];
  }
  if (pair?.kind === 'refused') {
    return pair.refusals.map(({ code, why, instead }) => ({
      what: 'join',
      code,
      message: `${why} ${instead}`,
    }));
  }
  const [a, b] = [first, second].map(({ question }) => question.lift.exercise);
  const shared = Object.keys(a?.direct ?? {}).filter((id) => b?.direct[id as MuscleId]);
  if (kind === 'pair' || shared.length === 0) return [];
  const names = shared
    .map((id) => inSentence(muscles.find((muscle) => muscle.id === id)?.name ?? id))
    .join(', ');
  const message = `${a?.name} and ${b?.name} both work ${names}, so neither rests while the other is done. Take turns with a lift for other muscles.`;
  return [{ what: 'join', code: 'session.in-turn-shares-muscles', message }];
}
