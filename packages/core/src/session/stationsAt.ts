import { type Exercise, findExercise, hasStations, type Station } from '../anatomy/index.ts';
import type { Equipment } from '../equipment/index.ts';
import { fullGym } from '../exchange/index.ts';
import type { PlanGym } from './PlanGym.ts';

/** An exercise that is known to be done on a piece of equipment. */
export interface KnownPlace {
  readonly exercise: string;
  readonly equipment: string;
}

/** What stands in a gym, and where. */
export interface GymStations {
  /** Everything, for questions about the whole gym. */
  readonly all: readonly Station[];
  /** Whether an exercise finds what it needs beside a piece of equipment. */
  readonly hasAt: (equipment: string, exercise: Pick<Exercise, 'stations'>) => boolean;
}

const OWN_PLACE: ReadonlySet<Equipment['kind']> = new Set(['stack', 'machine', 'body']);

/**
 * The stations of a gym: those that it names; those that an exercise needs that is known to be done
 * there, from a log or a plan; and those that carry the name of the equipment (`leg-press` is a
 * `leg-press-machine`). What belongs to a stack, a machine or a place for the body is only there;
 * benches and racks serve everything that can be carried to them.
 */
export function stationsAt(gym: PlanGym, known: readonly KnownPlace[]): GymStations {
  const shared = new Set<Station>();
  const own = new Map<string, Set<Station>>();
  const add = (station: Station, equipment: string | undefined) => {
    const item = gym.equipment.find(({ id }) => id === equipment);
    if (equipment === undefined || (item && !OWN_PLACE.has(item.kind))) shared.add(station);
    else own.set(equipment, (own.get(equipment) ?? new Set()).add(station));
  };
  for (const { station, equipment } of gym.stations ?? []) add(station, equipment);
  for (const { exercise, equipment } of known) {
    const found = findExercise(exercise);
    if (found.kind === 'unknown') continue;
    for (const station of found.exercise.stations) add(station, equipment);
  }
  for (const { id } of gym.equipment) {
    const namesakes = fullGym.stations.filter((one) => one === id || one === `${id}-machine`);
    for (const station of namesakes) add(station, id);
  }
  return {
    all: [...shared, ...[...own.values()].flatMap((stations) => [...stations])],
    hasAt: (equipment, { stations }) =>
      hasStations([...shared, ...(own.get(equipment) ?? [])], stations),
  };
}
