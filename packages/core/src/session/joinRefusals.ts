import type { MuscleId } from '../anatomy/index.ts';
import type { JoinIntent } from './Intent.ts';
import type { KnownLift } from './knownLift.ts';
import type { Refusal } from './LiftPlan.ts';
import { muscleName } from './muscleName.ts';
import type { PairAnswer } from './pairEffect.ts';

/** Why two lifts are not done in rounds: a pair that would not do what it is for, or turns without rest. */
export function joinRefusals(
  first: KnownLift,
  second: KnownLift,
  { kind }: Pick<JoinIntent, 'kind'>,
  pair: PairAnswer | undefined,
): readonly Refusal[] {
  if (pair?.kind === 'refused') {
    return pair.refusals.map(({ code, why, instead }) => ({
      what: 'join',
      code,
      message: `${why} ${instead}`,
    }));
  }
  const [a, b] = [first.question.lift.exercise, second.question.lift.exercise];
  const shared = (Object.keys(a.direct) as MuscleId[]).filter((id) => b.direct[id]);
  if (kind === 'pair' || shared.length === 0) return [];
  const names = shared.map(muscleName).join(', ');
  const message = `${a.name} and ${b.name} both work ${names}, so neither rests while the other is done. Take turns with a lift for other muscles.`;
  return [{ what: 'join', code: 'session.in-turn-shares-muscles', message }];
}
