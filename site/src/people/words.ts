/** Every word of the page of people and gyms. */
export const words = {
  title: 'People and gyms',
  lede: 'The people you plan for, the gyms they train in, and what they did. All of it stays in this browser; it leaves only in a file that you save.',
  description:
    'Keep people, gyms and training logs in your own browser: plan for them, take them along as one file, erase them in one step.',
  noScript:
    'People and gyms are kept by the browser itself, which needs JavaScript. It is turned off here, so nothing can be shown or kept.',
  opening: 'Opening what is kept…',
  again: 'Try again',
  dismiss: 'Put this message away',
  undo: 'Undo',
  cancel: 'Leave it',
  people: {
    title: 'People',
    empty:
      'Nobody is kept here yet. Add a name, or look around with the crew of an invented boathouse.',
    add: 'Name of a new person',
    examples: 'Add the boathouse crew',
    plan: 'Plan a session',
    planFor: (name: string) => `Plan a session for ${name}`,
    more: 'Details',
    moreOf: (name: string) => `Details of ${name}`,
    name: 'Name',
    gym: 'Usual gym',
    noGym: 'None',
    goneGym: 'A gym that is gone',
    delete: 'Delete person and log',
    sessions: (count: number) => (count === 1 ? 'session' : 'sessions'),
    last: (date: string) => `last ${date}`,
    noLog: 'none done yet',
    experience: {
      new: 'lifting for under two months',
      some: 'lifting for some months',
      experienced: 'lifting for a year or more',
    } as Readonly<Record<string, string>>,
    at: (gym: string) => `trains at ${gym}`,
    knownSets: (count: number) =>
      count === 0 ? '' : `${count} known ${count === 1 ? 'set' : 'sets'} beside the log`,
  },
  gyms: {
    title: 'Gyms',
    empty:
      'No gym is kept here yet. A new one starts with a 20 kg bar and its plates; the rest is said where a session is planned.',
    add: 'Name of a new gym',
    edit: 'Plan here',
    editOf: (name: string) => `Plan here: ${name}`,
    delete: 'Delete gym',
    pieces: (count: number) => (count === 1 ? 'piece' : 'pieces'),
    firstBar: 'Bar',
  },
  running: {
    says: (count: number) =>
      count === 1
        ? 'One session has begun and not ended. Its record is part of a backup.'
        : `${count} sessions have begun and not ended. Their records are part of a backup.`,
  },
  add: 'Add',
  wrongName: 'Give a name of 1 to 80 characters.',
  said: {
    added: (name: string) => `${name} is kept in this browser.`,
    examples: 'The boathouse crew is here: three people and their gym.',
    renamed: (name: string) => `${name} is the name now.`,
    gymSet: (name: string) => `The usual gym of ${name} is kept.`,
    deleted: (name: string) => `${name} is deleted.`,
    sessionDeleted: (date: string) => `The session of ${date} is deleted.`,
    back: (name: string) => `${name} is back.`,
    changedElsewhere: (name: string) =>
      `${name} was changed in another tab just now, and nothing was overwritten. What is there now is shown; do it again if it is still wanted.`,
    removedElsewhere: (name: string) =>
      `${name} was deleted in another tab just now, so there was nothing to change.`,
    erased: 'Everything is erased. Nothing is kept in this browser any more.',
    lost: 'The browser took the kept data away from this page: a newer Windlass is open, or its files were removed. Load the page again.',
  },
  broken: {
    title: 'Set aside',
    says: (count: number) =>
      count === 1
        ? 'One record cannot be read. It is left as it is and nothing else is touched by it.'
        : `${count} records cannot be read. They are left as they are and nothing else is touched by them.`,
    kinds: {
      clients: 'A person',
      gyms: 'A gym',
      sessions: 'A session done',
      running: 'A running session',
    },
    save: 'Save as a file',
    saveOf: (kind: string, id: string) => `Save as a file: ${kind} ${id}`,
    remove: 'Delete for good',
    removeOf: (kind: string, id: string) => `Delete for good: ${kind} ${id}`,
    removed: 'The record that could not be read is deleted.',
  },
  kept: {
    title: 'Kept here',
    counts: { people: 'people', gyms: 'gyms', sessions: 'sessions' },
    one: { people: 'person', gyms: 'gym', sessions: 'session' },
    used: (size: string, room: string) =>
      `${size} used of the ${room} that the browser gives this site, its pages for use without a network included.`,
    lasting: 'The browser has agreed to keep it until you erase it.',
    notLasting:
      'When the device runs short of room, the browser may throw it away. It can be asked not to; a backup is surer.',
    unsaid: 'The browser does not say how long it keeps it. A backup is surer.',
    ask: 'Ask it to keep it',
    refused:
      'The browser has not agreed. Some do once a site is used often or put on the home screen.',
    backup: 'Save a backup',
    restore: 'Restore from a file',
    erase: 'Erase everything',
    backupFile: (date: string) => `windlass-backup-${date}.json`,
    backupWithBroken: (count: number) =>
      `The backup is saved, without the ${count === 1 ? 'record that is' : `${count} records that are`} set aside: save ${count === 1 ? 'it as a file' : 'them as files'} of their own.`,
  },
  erase: {
    title: 'Erase everything?',
    goes: (parts: readonly string[]) =>
      `From this browser go: ${parts.join(', ')}, and the unit that loads were asked for in last. Files that you saved stay. There is no way back but a backup.`,
    nothing: 'nothing but settings',
    people: (count: number) => `${count} ${count === 1 ? 'person' : 'people'}`,
    gyms: (count: number) => `${count} ${count === 1 ? 'gym' : 'gyms'}`,
    sessions: (count: number) => `${count} ${count === 1 ? 'session' : 'sessions'} done`,
    running: (count: number) => `${count} running ${count === 1 ? 'session' : 'sessions'}`,
    broken: (count: number) => `${count} ${count === 1 ? 'record' : 'records'} set aside`,
    now: 'Erase all of it',
  },
  size: (bytes: number): readonly [number, string] =>
    bytes < 1e6 ? [bytes / 1e3, 'kB'] : bytes < 1e9 ? [bytes / 1e6, 'MB'] : [bytes / 1e9, 'GB'],
} as const;
