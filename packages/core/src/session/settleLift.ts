import type { Gym } from '../equipment/index.ts';
import type { Limits } from '../safety/index.ts';
import type { Client } from './Client.ts';
import type { LiftIntent } from './Intent.ts';
import type { ChosenFor, LiftOverruled, Refusal } from './LiftPlan.ts';
import { liftLimits } from './liftLimits.ts';
import { type Lift, liftOf, type NoLift } from './liftOf.ts';

/** A lift that can be done, with what somebody has fixed of it in its intent. */
export interface SettledLift {
  readonly kind: 'settled';
  readonly lift: Lift;
  readonly overruled: LiftOverruled;
  readonly refused: readonly Refusal[];
  readonly chosenFor?: ChosenFor;
}

/** A lift that cannot be done here, or by this person. */
export interface UnsettledLift {
  readonly kind: 'unsettled';
  readonly intent: LiftIntent;
  readonly reason: NoLift['reason'] | 'limits';
  readonly message: string;
}

const MOST_SETS = 10;
const LONGEST_REST = 1800;

/** A wanted lift with its overruled set-up, sets and rests, or why it is left out. */
export function settleLift(
  wanted: LiftIntent,
  gym: Gym,
  { bodyWeight }: Pick<Client, 'bodyWeight'>,
  limits: Limits,
): SettledLift | UnsettledLift {
  const overrules = wanted.overrules ?? {};
  const counts = countsOf(wanted);
  const usual = wanted.variant ?? 'usual';
  const other = overrules.variant ?? usual;
  const asked =
    other === usual
      ? undefined
      : open({ ...counts.intent, variant: other }, gym, bodyWeight, limits);
  if (asked?.kind === 'lift') {
    return {
      kind: 'settled',
      lift: asked,
      overruled: { variant: { chosen: usual }, ...counts.overruled },
      refused: counts.refused,
    };
  }
  const lift = open(counts.intent, gym, bodyWeight, limits);
  if (lift.kind === 'unsettled') return { ...lift, intent: wanted };
  const refused: readonly Refusal[] = asked
    ? [{ what: 'variant', code: 'session.variant-not-open', message: asked.message }]
    : [];
  return {
    kind: 'settled',
    lift,
    overruled: counts.overruled,
    refused: [...refused, ...counts.refused],
  };
}

function open(
  intent: LiftIntent,
  gym: Gym,
  bodyWeight: Client['bodyWeight'],
  limits: Limits,
): Lift | UnsettledLift {
  const { variant, ...usual } = intent;
  const lift = liftOf(variant === 'usual' ? usual : intent, gym, bodyWeight);
  if (lift.kind === 'no-lift') return { ...lift, kind: 'unsettled', intent };
  const message = liftLimits(lift, limits);
  return message === undefined ? lift : { kind: 'unsettled', intent, reason: 'limits', message };
}

/** Sets and rests as they are fixed, where that is possible. */
function countsOf(wanted: LiftIntent) {
  const { sets, restSeconds } = wanted.overrules ?? {};
  const refused: Refusal[] = [];
  const within = (value: number | undefined, least: number, most: number, refusal: Refusal) => {
    if (value === undefined) return undefined;
    if (Number.isInteger(value) && value >= least && value <= most) return value;
    refused.push(refusal);
    return undefined;
  };
  const fixedSets = within(sets, 1, MOST_SETS, {
    what: 'sets',
    code: 'session.sets-out-of-range',
    message: `Fix the number of sets as a whole number from 1 to ${MOST_SETS}.`,
  });
  const fixedRest = within(restSeconds, 0, LONGEST_REST, {
    what: 'rest',
    code: 'session.rest-out-of-range',
    message: `Fix the rest as a whole number of seconds from 0 to ${LONGEST_REST}.`,
  });
  const intent: LiftIntent = {
    ...wanted,
    sets: fixedSets ?? wanted.sets,
    restSeconds: fixedRest ?? wanted.restSeconds,
  };
  const overruled: LiftOverruled = {
    ...(intent.sets !== wanted.sets && { sets: { chosen: wanted.sets } }),
    ...(intent.restSeconds !== wanted.restSeconds && {
      restSeconds: { chosen: wanted.restSeconds },
    }),
  };
  return { intent, overruled, refused };
}
