/** What the review of a log says about its result. */
export const said = {
  holds: {
    date: 'Date',
    exercise: 'Exercise',
    load: 'Load',
    reps: 'Repetitions',
    set: 'Number of the set',
    unit: 'Unit',
    counts: 'What the load counts',
    side: 'Side',
    hands: 'Hands with a weight',
    body: 'Body weight',
    ended: 'How it ended',
    reserve: 'Repetitions left',
    effort: 'Effort of 10',
    tempo: 'Tempo',
    rest: 'Rest before, in seconds',
    tags: 'Tags',
    equipment: 'Machine or bar',
    note: 'Note',
  },
  notRead: 'not read',
  noColumns: 'Paste a log, and its columns stand here.',
  column: (number: number) => `Column ${number}`,
  holdsOf: (column: string) => `${column}: what it holds`,
  table: (rows: number, separator: string) =>
    `${rows} rows, with ${separator} between the columns.`,
  separators: { ',': 'a comma', ';': 'a semicolon', '\t': 'a tab', '|': 'a bar' },
  open: 'Open a file',
  clear: 'Empty it',
  reading: (name: string) => `Reading ${name}…`,
  opened: (name: string) => `${name} is read.`,
  tooLarge: 'This file is too large for a log. Nothing was changed.',
  long: (thousands: number) =>
    `A log of ${thousands} thousand characters: too long to be shown here.`,
  notInAddress:
    'It is too long for the address: a copied link has everything but the log, and a reload begins without it.',
  trainedLast: 'The one trained last',
  none: 'No next load',
  nextLoad: 'Next load',
  noReview: {
    columns: (needed: string) =>
      `Say which column holds: ${needed}. It stands under “How the log is read”.`,
    'no-sets': () =>
      'No set could be read. Paste rows of sets, or see below what is wrong with each row.',
    'nothing-to-review': () => 'No set lies before the day of the next session. Change the day.',
    'lift-not-in-log': () =>
      'The log has no set of this lift up to that day. Choose another lift or day.',
    'body-weight-not-given': () =>
      'These sets were done with the body, and no body weight is noted. Give it under “What this gym has, and the body”.',
    'nothing-moved': () =>
      'In these sets nothing was moved: the help took off the whole body, or the load is 0.',
    'not-of-this-machine': () =>
      'The stack here cannot show the numbers that were logged. Change its plates under “What this gym has, and the body”.',
  },
  readSoFar: (sets: number, unread: number) =>
    `${sets} ${sets === 1 ? 'set' : 'sets'} read, ${unread} ${unread === 1 ? 'row' : 'rows'} not.`,
  list: (names: readonly string[]) =>
    names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`,
  unread: (count: number) => (count === 1 ? 'One row was not read' : `${count} rows were not read`),
  unreadColumns: { line: 'Line', row: 'Row, and what would be right' },
  unreadRest: (count: number) => `And ${count} more: save them to see all.`,
  saveUnread: 'Save the rows that were not read',
  unreadFile: 'rows-not-read.txt',
  painWhy: 'Pain was reported since the last session.',
  noHistory:
    'All sessions of this lift are tagged as travel, light or test, so there is none to go by.',
  headline: (lift: string, date: string) => `${lift}, ${date}`,
  toMove: (load: string) => `${load} to move`,
  unitTimes: (unit: string, reps: number) => `${unit} × ${reps}`,
  repsToFailure: 'reps to failure',
  kinds: {
    raise: 'Heavier.',
    repeat: 'The same load again.',
    'reps-first': 'Repetitions first.',
    lower: 'Lighter.',
    reset: 'A tenth back.',
    'come-back': 'A start after a break.',
  },
  noTrend: (sessions: number) =>
    `No trend from ${sessions} ${sessions === 1 ? 'session' : 'sessions'}: three on different days are needed.`,
  noLately: 'Too few sessions in the last eight weeks for a trend',
  rate: (likely: string, low: string, high: string) => `${likely} % a week (${low} to ${high})`,
  trendLabel: (lift: string, unit: string) =>
    `${lift}: the one-rep max that each session speaks for, in ${unit}, and the trend of eight weeks`,
  trendSays: (lift: string, rate: string, sessions: number) =>
    `${lift}: strength over ${sessions} sessions. Trend of the last eight weeks: ${rate}.`,
  next: 'The next session',
  chances: (before: string, inside: string, beyond: string, low: number, high: number) =>
    `Chance that a set ends before ${low}: ${before}; at ${low === high ? low : `${low} to ${high}`}: ${inside}; beyond: ${beyond}.`,
  nextStep: (load: string, percent: string) => `The step after it: ${load}, ${percent} % more.`,
  kept: (low: string, high: string, left: number, sets: string) =>
    `Strength likely kept: ${low} to ${high}. In the first week leave ${left} repetitions, with ${sets} of the sets.`,
  weeks: (loads: readonly string[]) =>
    `A way back, week by week: ${loads.join(', ')}. A guide, not a goal.`,
  lightWeek: (sets: number, load: string, reps: number, percent: string, left: number) =>
    `A light week would be ${sets} × ${reps} with ${load} (${percent} % lighter), at least ${left} left in every set. Tag such sets light.`,
  lastTime: (date: string) => `Expected and done, ${date}`,
  lastColumns: { set: 'Set', expected: 'Expected', done: 'Done' },
  set: (load: string, reps: number) => `${load} × ${reps}`,
  span: (low: string, high: string) => (low === high ? low : `${low} to ${high}`),
  standings: {
    below: 'fewer than expected',
    'as-expected': 'as expected',
    above: 'more than expected',
    'floor-only': 'stopped on purpose',
  },
  nothingBefore: 'No session before it to expect anything from.',
  lastNote:
    'Repetitions to failure, those left included. Of ten sets two lie outside by chance alone, so one is no news. Later sets count where the rest before them was noted.',
  stall: 'Standing still?',
  standingOf: { 'in-the-log': 'In the log:', 'not-in-the-log': 'Ruled out:', ask: 'Ask:' },
  test: (test: string) => `Test, one change at a time: ${test}`,
  stallNote: (sets: number, reps: number) =>
    `Held against ${sets} ${sets === 1 ? 'set' : 'sets'} of ${reps}, over the latest sessions with the same load, tempo and rests. A stall takes three misses in a row and a trend that more likely than not gains less than 0.25 % a week.`,
  sides: (says: string) => `Left and right: ${says}`,
  lifts: 'All lifts',
  liftColumns: { lift: 'Lift', trend: 'Strength, last eight weeks' },
  sessions: (sessions: number, aside: number, date: string, days: number) =>
    `${sessions} ${sessions === 1 ? 'session' : 'sessions'}${aside > 0 ? ` (${aside} set aside)` : ''}, last on ${date}, ${days} ${days === 1 ? 'day' : 'days'} ago`,
  leftOut: (count: number) =>
    `${count} ${count === 1 ? 'set is' : 'sets are'} left out: no body weight, or nothing moved`,
  rising: (percent: string) => `rising with a chance of ${percent}`,
  moreLifts: (count: number) => `And ${count} more.`,
  liftsNote:
    'Straight lines through what the sets say of strength; the band holds 8 in 10. Sessions tagged travel, light or test are set aside.',
  dose: 'Sets a week',
  doseFrom: (from: string, to: string) =>
    `Mean of the four whole weeks from ${from} to ${to}. A muscle that helps counts half a set.`,
  doseColumns: { muscle: 'Muscle', sets: 'Sets a week' },
  noDose: 'No set of a known exercise in these weeks.',
  unknown: (names: readonly string[]) =>
    `Not counted, because no exercise of the library has the name: ${names.slice(0, 12).join(', ')}${names.length > 12 ? ` and ${names.length - 12} more` : ''}. Say what they are under “How the log is read”.`,
  speaksFor: { 'more-sets': 'For more sets', 'few-sets-suffice': 'For few sets' },
  bothSides:
    'Studies do not agree, and nobody has reconciled them: neither side is left out here, and no number of sets is called right.',
  file: 'The log as a file',
  save: (count: number) => `Save ${count} ${count === 1 ? 'set' : 'sets'} (.csv)`,
  fileName: 'training-log.csv',
  fileNote:
    'With the columns of this library, to be opened here again or read by a program. What was not read is not in it.',
  formula:
    'repetitions through the window, then the smallest step up of 2 to 10 %, then repetitions again',
  lastSession: (date: string, load: string, reps: string, low: number, high: number) =>
    `${date}: ${load} for ${reps}; the window is ${low === high ? low : `${low} to ${high}`}.`,
  believed: (low: string, high: string) =>
    `One-rep max believed on the day: ${low} to ${high} in 8 of 10, everything that moves.`,
  rule: (says: string) => says,
  moved: (shown: string, moved: string) => `${shown} to read or count; ${moved} to move.`,
  restsOn:
    'The order of things is a consensus of coaches and of the American College of Sports Medicine; the chances come from the sets of its last six weeks. It looks at the log alone: form, sleep and pain are not in it.',
  recovery: 'When may these muscles be trained hard again?',
  window: 'Which load fails in a rep window?',
  strength: 'What do these sets say about the one-rep max?',
} as const;
