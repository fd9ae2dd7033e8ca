import { applyVariant, type Exercise, findExercise, type Variant } from '../anatomy/index.ts';
import { atHandFrom, exchangeFor, objectionsTo, type Suggestion } from '../exchange/index.ts';
import type { Limits } from '../safety/index.ts';
import type { Client } from './Client.ts';
import { equipmentFor } from './equipmentFor.ts';
import type { LeftOutLift, LiftExchange } from './LiftPlan.ts';
import { liftName } from './liftName.ts';
import type { PlanGym } from './PlanGym.ts';
import type { GymStations } from './stationsAt.ts';

/** Who and where, for an exchange. */
export interface ExchangePlace {
  readonly client: Client;
  readonly gym: PlanGym;
  readonly limits: Limits;
  readonly stations: GymStations;
}

const MOST = 3;
/** So many are looked at for equipment; those further down fit worse than three that are there. */
const LOOKED_AT = 25;

/**
 * What to do instead of a lift that is left out: the same exercise on other equipment or set up
 * differently, then other exercises by `exchangeFor`; only what this gym can load and this person's
 * limits leave open.
 *
 * @returns best first, three at most; empty where only time is missing, the exercise is not known
 *   or somebody has to be asked first.
 */
export function exchangesFor(
  { intent, reason }: Pick<LeftOutLift, 'intent' | 'reason'>,
  place: ExchangePlace,
): readonly LiftExchange[] {
  const found = findExercise(intent.exercise);
  if (reason === 'no-time' || found.kind === 'unknown') return [];
  const { limits, client, gym, stations } = place;
  const variant = found.exercise.variants.find(({ id }) => id === intent.variant);
  const wanted = variant ? applyVariant(found.exercise, variant) : found.exercise;
  const exchange = exchangeFor(wanted, {
    limits,
    atHand: atHandFrom(gym, stations.all),
    alone: client.alone,
    toFailure: limits.repsInReserve.atLeast === 0,
    most: LOOKED_AT,
  });
  if (exchange.kind !== 'options') return [];
  const isOpen = objectionsTo(wanted, limits).length === 0;
  const same = isOpen ? sameElsewhere(intent.equipment, wanted, variant, place) : [];
  const others = [...exchange.setUps, ...exchange.others].flatMap((one) => inPlace(one, place));
  return [...same, ...others].slice(0, MOST);
}

function sameElsewhere(
  equipment: string,
  wanted: Exercise,
  setUp: Variant | undefined,
  place: ExchangePlace,
): readonly LiftExchange[] {
  const item = equipmentFor(wanted, place, equipment);
  if (item === undefined) return [];
  return [
    {
      exercise: wanted.id,
      ...(setUp && { variant: setUp.id }),
      equipment: item.id,
      name: liftName(wanted, setUp),
      equipmentName: item.name,
      reasonsFor: ['It is the same exercise on other equipment.'],
      reasonsAgainst: [],
    },
  ];
}

/** A suggestion with the equipment for it; none where that is missing or it takes two set-ups. */
function inPlace(
  { exercise, setUps, reasonsFor, reasonsAgainst }: Suggestion,
  place: ExchangePlace,
): readonly LiftExchange[] {
  const [setUp, second] = setUps;
  const item = equipmentFor(exercise, place);
  if (second !== undefined || item === undefined) return [];
  return [
    {
      exercise: exercise.id,
      ...(setUp && { variant: setUp.id }),
      equipment: item.id,
      name: liftName(exercise, setUp),
      equipmentName: item.name,
      reasonsFor: reasonsFor.map(({ words }) => words),
      reasonsAgainst: reasonsAgainst.map(({ words }) => words),
    },
  ];
}
