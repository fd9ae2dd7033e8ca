/** What the calculator of the calendar says about its result. */
export const said = {
  kinds: {
    whole: 'Whole body',
    upper: 'Upper body',
    pull: 'Pull',
    push: 'Push',
    legs: 'Legs',
    hips: 'Hips',
    arms: 'Arms',
  },
  ownGym: 'own gym',
  otherGym: 'other gym',
  light: 'light',
  noPlan: 'No plan',
  noSuchSession: (session: number, count: number) =>
    `A past or fixed session is number ${session}, and there ${count === 1 ? 'is 1 session' : `are ${count} sessions`}. Choose one of the list.`,
  stayUpsideDown: 'A stay away ends before it begins. Change its dates.',
  nothingFits: 'No session fits',
  nothingFitsSays: 'What stood in the way, day by day, and below what would help.',
  fixedConflict: 'The fixed sessions cannot all stay',
  fixedConflictSays: 'Move one of them, or let it go.',
  conflict: (name: string, start: string, muscles: string, earliest: string) =>
    `${name} on ${start} comes too early for ${muscles}: ready on ${earliest}.`,
  conflictOther: 'Two of them lie on one day, outside the order, or beyond the sessions a week.',
  headline: 'Sessions placed',
  sessions: sessionsWord,
  asked: (count: number) => `of ${count} asked for`,
  allFit: 'Each is placed when the muscles it trains are ready, one a day at most.',
  notAll: 'No better placing exists within these hours. What had to give stands below.',
  weekOf: (date: string) => `Week of ${date}`,
  table: 'The plan, week by week',
  cellLight: (name: string) => `${name}, light`,
  weekShort: (date: string, placed: number, asked: number) => `From ${date}: ${placed} of ${asked}`,
  obstacle: (day: string, why: string) => `${day}: ${why}`,
  notReadyUntil: (day: string, name: string, ready: string) =>
    `${day}: ${name} is due, and its muscles are ready on ${ready}.`,
  obstacles: {
    'no-hours': () => 'no time to train.',
    'too-short': (name: string) => `less time than ${name} takes.`,
    'other-gym': (name: string) => `${name} is due, and cannot be done in the gym of that day.`,
    'day-rule': () => 'the rule for that kind of day.',
    'not-ready': (name: string) => `${name} is due, and its muscles are not ready.`,
    'before-the-next': (name: string) =>
      `${name} would fit, and no plan with it there holds more sessions.`,
  },
  moreDays: (count: number) => `And ${count} more ${count === 1 ? 'day' : 'days'}.`,
  gave: 'What had to give',
  changes: 'The smallest change that would allow more',
  changesNote: 'Nothing is changed by itself: the choice is yours.',
  noChange: 'No single change of hours, length, order or work lets one more session in.',
  lessWork: (hours: string, muscles: string, sessions: number) =>
    `Less work, so that muscles are ready ${hours} h sooner${muscles === '' ? '' : ` (${muscles})`}: ${counted(sessions)}.`,
  shorter: (minutes: number, sessions: number) =>
    `Sessions shorter by ${minutes} min: ${counted(sessions)}.`,
  anotherDay: (date: string, from: string, to: string, sessions: number) =>
    `Time on ${date} as well, from ${from} to ${to}: ${counted(sessions)}.`,
  anyOrder: (sessions: number) => `Sessions of a round in any order: ${counted(sessions)}.`,
  list: (names: readonly string[]) =>
    names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`,
  each: 'Every session, and how long its muscles had',
  columns: { when: 'When', session: 'Session' },
  until: (start: string, end: string) => `${start} to ${end}`,
  gap: (muscle: string, hours: string, needed: string) =>
    `${muscle}: ${hours} h since the last time, ${needed} h asked for`,
  noGap: 'nothing of it was trained before',
  inGym: (name: string, gym: string) => `${name}, ${gym}`,
  eachNote: (by: string) =>
    `Hours are elapsed hours, from start to start, until ${by} are ready. The muscle with the shortest margin is named.`,
  by: { earliest: '1 person in 10', likely: '5 in 10', cautious: '9 in 10' },
  missed: 'The missed session',
  missedAt: (name: string, start: string) =>
    `${name} is made up on ${start}, at its usual loads. No day gets two sessions.`,
  missedAlso: (days: string) => `With the others where they are, it could also begin on ${days}.`,
  missedOnly: 'With the others where they are, no other day has room for it. Or let it go.',
  file: 'Calendar file',
  save: 'Save for a calendar (.ics)',
  fileNote:
    'Every session keeps its name inside the file, so that a later file of the same plan moves it and doubles none. It is made on this device and goes nowhere else.',
  fileName: (plan: string) => `${plan}.ics`,
  planName: 'training',
  describe: (name: string, sets: number, end: string) =>
    `${name}: ${sets} ${sets === 1 ? 'set' : 'sets'} of each exercise, ${end}.`,
  describeLight: 'Light: half the sets, at least three repetitions left.',
  ends: {
    '3': 'three left',
    '2': 'two left',
    '1': 'one left',
    '0': 'to failure',
    past: 'past failure',
  },
  notReviewed: {
    what: 'A plan of dates cannot see the day.',
    why: 'A short night, an illness or soreness that stays make a muscle ready later than any plan.',
    instead: 'Move the session; the plan follows from where it then lies.',
  },
  formula: 'start of a session − last start that trained the muscle ≥ hours of the muscle',
  hoursOf: (name: string, muscle: string, hours: string) =>
    `${name} asks most for ${muscle}: ${hours} h.`,
  searched: (minutes: number) =>
    `No plan within these hours holds more sessions; every way was considered, with a start every ${minutes} min from an opening on. Among plans of as many: the most evenly spread, then the earliest.`,
  tightest: (muscle: string, name: string, when: string, hours: string, needed: string) =>
    `Tightest: ${muscle} before ${name} on ${when}, ${hours} h where ${needed} h are asked for.`,
  restsOn:
    'The hours come from sets counted by muscle, how they end, and what 24 studies saw of hours until repetitions and force are back. They are a forecast for people like this, not a measurement of one.',
  ready: 'When is each muscle ready?',
} as const;

function sessionsWord(count: number): string {
  return count === 1 ? 'session' : 'sessions';
}

function counted(count: number): string {
  return `${count} ${sessionsWord(count)}`;
}
