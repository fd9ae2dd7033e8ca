const each = { '2': ', each hand', '1': ', one hand' } as const;

/** What the calculator of a gym's loads says about its result. */
export const said = {
  noLoad: 'No load',
  notKnown: 'Not known',
  band: 'A band pulls harder the further it is stretched. Note which band it is and how far it is stretched, and count repetitions.',
  nothingLeft: 'Nothing left to lift',
  helped: (message: string, bodyWeight: string) => `${message} The body weighs ${bodyWeight}.`,
  makes: 'All in all this makes',
  loads: (count: number) => (count === 1 ? 'load' : 'loads'),
  span: (lightest: string, heaviest: string) =>
    lightest === heaviest ? lightest : `${lightest} to ${heaviest}`,
  nearest: (wish: string, hands: '2' | '1' | null) =>
    `Nearest to ${wish}${hands === null ? '' : each[hands]}`,
  fromNumber: {
    stack: (number: string) => `With ${number} on the stack, at the handle`,
    machine: (number: string) => `With ${number} of plates, along the rail`,
    belt: (number: string) => `With ${number} on the belt, moved`,
    help: (number: string) => `With ${number} of help, moved`,
    nothing: () => 'The body alone, moved',
  },
  toNumber: {
    stack: (load: string) => `For ${load} at the handle, on the stack`,
    machine: (load: string) => `For ${load} along the rail, plates`,
    belt: (load: string) => `For ${load} moved, on the belt`,
    help: (load: string) => `For ${load} moved, add`,
    nothing: (load: string) => `For ${load} moved, add`,
  },
  moves: {
    stack: (load: string) => `${load} at the handle`,
    machine: (load: string) => `${load} moved`,
    body: (load: string) => `${load} moved`,
  },
  added: (number: string) => `${number} added`,
  exact: 'Exactly that.',
  off: (distance: string) => `${distance} what was asked for.`,
  noPlates: 'no plates on it',
  platesOnly: 'Plates only: nobody knows what it weighs empty.',
  frictionLess: 'Friction is not in it.',
  range: (low: string, high: string) => `${low} to ${high}, as the position goes.`,
  nextUp: (load: string, percent: string) => `Next up: ${load}, ${percent} more.`,
  nextUpLarge: (load: string, percent: string) =>
    `Next up: ${load}, ${percent} more, which is bridged first.`,
  heaviestHere: 'Nothing heavier here.',
  largest: (from: string, to: string, percent: string) =>
    `Largest step: ${from} to ${to}, ${percent} more.`,
  over: (count: number, all: number) =>
    count === 0 ? 'No step is over 10 %.' : `${count} of ${all} steps are over 10 %.`,
  onlyOne: 'Nothing here can be added to it.',
  formula: {
    bar: 'load = bar + 2 × collar + 2 × (plates on one side)',
    dumbbells: 'load of a hand = what is written on the dumbbell; a pair needs two of them',
    handles: 'load of a hand = handle + 2 × (plates on one end)',
    stack: 'load at the handle = (number at the pin + add-ons) ÷ pulley',
    machine: 'load along the rail = (moving part + plates) × sin(angle of the rail)',
    machineUnknown: 'load along the rail = (unknown moving part + plates) × sin(angle of the rail)',
    body: 'load moved = share of the body × body weight + what is added, help as a minus',
    post: 'load = empty post + plates',
  },
  sum: {
    bar: (bar: string, collar: string, side: string, load: string) =>
      `${bar} + 2 × ${collar} + 2 × (${side || '0'}) = ${load}`,
    handles: (handle: string, end: string, load: string) =>
      `${handle} + 2 × (${end || '0'}) = ${load}`,
    dumbbells: (weight: string) => `${weight} on the dumbbell is ${weight} in the hand.`,
    stack: (number: string, ratio: number, load: string) => `${number} ÷ ${ratio} = ${load}`,
    machine: (start: string, plates: string, degrees: number, load: string) =>
      `(${start} + ${plates}) × sin(${degrees}°) = ${load}`,
    body: (share: string, weight: string, added: string, load: string) =>
      `${share} × ${weight} ${added} = ${load}`,
    post: (base: string, plates: string, load: string) => `${base} + ${plates || '0'} = ${load}`,
  },
  plus: (load: string) => `+ ${load}`,
  minus: (load: string) => `− ${load}`,
  counted: (count: number, span: string) =>
    count === 1 ? `One load, ${span}.` : `${count} different loads, ${span}.`,
  step: (to: string, from: string, percent: string) =>
    `Step up: (${to} − ${from}) ÷ ${from} = ${percent}.`,
  restsOn:
    'Counted from what is there, in whole steps of 10 ng; what is written on a piece is taken as true. Up to 10 % a step is ordinary: consensus on progression, not a measurement.',
  stairs: (says: string) => `The loads around it as stairs: ${says}.`,
  strip: (span: string) => `Below, a line with a mark for every load, ${span}.`,
  around: 'Load by load',
  columns: { load: 'Load', number: 'Number', moved: 'Moved', step: 'Step up to it' },
  chosen: 'nearest',
  stepTo: (difference: string, percent: string) => `${difference}, ${percent}`,
  bridgeIt: 'over 10 %',
  shownOf: (shown: number, all: number) => `${shown} of ${all} loads, those around it.`,
  bridge: (from: string, to: string) => `From ${from} to ${to}`,
  bridgeFirst: 'Over 10 % at once. Bridge it, one way at a time:',
  beyond:
    'So large a step lies outside what any rep curve can foretell; no count of reps makes up for it. One way at a time:',
  addsAtMost: (load: string) => `All together at most ${load}.`,
  reps: (low: string, high: string, from: string, goal: number, to: string) =>
    `${low === high ? low : `${low} to ${high}`} reps with ${from} foretell ${goal} with ${to}, in 8 of 10 people.`,
  tooMany:
    'That can take more than 20 reps, which say little about strength: choose another bridge.',
  all: 'All loads',
  run: (first: string, last: string, step: string) => `${first} to ${last} by ${step}`,
  notes: 'About these numbers',
  window: 'Which of them fails in a rep window?',
  first: 'No numbers yet: find a first load',
  loadTheBar: (load: string) => `Load the bar to ${load}`,
  sets: 'What do my sets say about my one-rep max?',
} as const;
