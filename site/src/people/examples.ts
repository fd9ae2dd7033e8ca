import type { LoggedSet } from '@windlass/core/progress';
import type { Saved, SavedLists } from '@windlass/core/schema';
import firstDay from '../../../examples/boathouse/first-day.json';
import gym from '../../../examples/boathouse/gym.json';
import legDay from '../../../examples/boathouse/leg-day.json';
import pullDay from '../../../examples/boathouse/pull-day.json';
import type { Stamp } from '../storage/index.ts';
import { loggedSets } from './loggedSets.ts';

/** The crew of the invented boathouse with their gym; the sets they did stand in their logs. */
export function boathouseRecords(
  freshId: () => string,
  { revision, at }: Stamp,
): Omit<SavedLists, 'running'> {
  const saved = (): Saved => ({ id: freshId(), revision, past: [], changedAt: at });
  const room = { ...saved(), gym };
  const crew = [pullDay, legDay, firstDay].map(({ client }) => ({
    record: { ...saved(), client: { ...client, sets: [] }, gymId: room.id },
    sets: loggedSets(client),
  }));
  const sessions = crew.flatMap(({ record: { id }, sets }) =>
    [...Map.groupBy(sets, ({ date }: LoggedSet) => date)].map(([date, done]) => ({
      ...saved(),
      clientId: id,
      date,
      sets: done,
    })),
  );
  return { clients: crew.map(({ record }) => record), gyms: [room], sessions };
}
