import type { Exercise } from '../anatomy/index.ts';
import type { Client } from './Client.ts';
import type { ExchangePlace } from './exchangesFor.ts';
import { liftOf } from './liftOf.ts';
import type { PlanGym } from './PlanGym.ts';

/** Equipment with the stations that an exercise needs: where it was done before, else the first. */
export function equipmentFor(
  exercise: Exercise,
  { client, gym, stations }: Pick<ExchangePlace, 'client' | 'gym' | 'stations'>,
  except?: string,
) {
  const able = gym.equipment.filter(({ id }) => {
    if (id === except || !stations.hasAt(id, exercise)) return false;
    return canBeLoaded(exercise.id, id, gym, client);
  });
  const before = client.sets.findLast(
    (set) => set.exercise === exercise.id && able.some(({ id }) => id === set.equipment),
  );
  return able.find(({ id }) => id === before?.equipment) ?? able[0];
}

function canBeLoaded(exercise: string, equipment: string, gym: PlanGym, { bodyWeight }: Client) {
  const intent = { exercise, equipment, window, tempo, sets: 1, restSeconds: 0 };
  return liftOf(intent, gym, bodyWeight).kind === 'lift';
}

/** Whether a load can be made depends on neither. */
const window = { minReps: 1, maxReps: 1 };
const tempo = {
  lowerSeconds: 1,
  pauseAfterLowerSeconds: 0,
  liftSeconds: 1,
  pauseAfterLiftSeconds: 0,
};
