import type { LoggedSet } from '@windlass/core/progress';
import { readClient } from '@windlass/core/schema';
import { formatTempo } from '@windlass/core/tempo';

/** What the number on each piece of the boathouse's equipment counts. */
const counts: Readonly<Record<string, LoggedSet['counts']>> = {
  dumbbells: 'each-hand',
  pulldown: 'stack',
  'leg-extension': 'stack',
  'leg-press': 'plates',
};

/** The known sets of a person of the boathouse as a log, oldest first. */
export function loggedSets(client: unknown): readonly LoggedSet[] {
  const read = readClient(client);
  if (!read.ok) throw new RangeError(`loggedSets: ${read.problems[0]?.message}`);
  const inOrder = read.value.sets.toSorted((a, b) => a.date.localeCompare(b.date));
  return inOrder.map(({ date, exercise, equipment, load, reps, end, tempo, bodyWeight }) => ({
    date,
    exercise,
    set: 1,
    load,
    counts: counts[equipment] ?? 'total',
    ...(exercise.startsWith('one-arm') && { hands: 1 }),
    ...(bodyWeight && { bodyWeight }),
    reps,
    end,
    ...(tempo && { tempo: formatTempo(tempo) }),
    equipment,
  }));
}
