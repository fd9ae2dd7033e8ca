import type { SavedKind } from '@windlass/core/schema';

/** Every word of restoring a backup. */
export const words = {
  title: (file: string) => `From ${file}`,
  from: (when: string) => `Written ${when}. Nothing is changed until you say so below.`,
  damaged: (file: string, why: string) => `${file} cannot be restored. ${why} Nothing was changed.`,
  empty: 'There is nothing in this file.',
  states: {
    added: 'Not here: would be added',
    mends: 'In place of records here that cannot be read',
    'file-goes-on': 'The file has a later state of these',
    'here-goes-on': 'Here is a later state than in the file',
    conflict: 'Changed both here and in the file, each in its own way',
    same: 'The same here and in the file',
  },
  kinds: {
    clients: 'Person',
    gyms: 'Gym',
    sessions: 'Session',
    running: 'Running session',
  } satisfies Record<SavedKind, string>,
  session: (day: string, person: string) => (person === '' ? day : `${day}, ${person}`),
  keep: 'Keep what is here',
  take: "Take the file's",
  add: 'Add it',
  leave: 'Leave it out',
  changed: (here: string, file: string) => `here changed ${here}, in the file ${file}`,
  differs: (parts: readonly string[]) => `differs in: ${parts.join(', ')}`,
  parts: {
    name: 'name',
    experience: 'experience',
    bodyWeight: 'body weight',
    health: 'health',
    alone: 'help with a load',
    sets: 'sets',
    gymId: 'usual gym',
    plates: 'plates',
    equipment: 'equipment',
    clientId: 'person',
    date: 'day',
    plan: 'plan',
    startedAt: 'start',
    events: 'what happened',
  } as Readonly<Record<string, string>>,
  all: { take: 'Take all of these', keep: 'Keep all that is here' },
  others: (count: number) =>
    count === 1
      ? 'One more record is here and not in the file; it stays.'
      : `${count} more records are here and not in the file; they stay.`,
  unread: (count: number) =>
    count === 1
      ? 'One record of the file cannot be read and is left out:'
      : `${count} records of the file cannot be read and are left out:`,
  place: (kind: string, number: number) => `${kind} ${number} of the file`,
  result: (count: number) =>
    count === 0
      ? 'Nothing would be changed.'
      : `${count} ${count === 1 ? 'record' : 'records'} would be written.`,
  restore: (count: number) => `Write ${count} ${count === 1 ? 'record' : 'records'}`,
  stop: 'Leave everything as it is',
  done: (count: number) =>
    `${count} ${count === 1 ? 'record is' : 'records are'} restored from the file.`,
  changedMeanwhile:
    'Something here was changed in another tab meanwhile, so nothing was written. The list below is new; look at it again.',
} as const;
