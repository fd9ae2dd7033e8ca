/** What the comparison of equations says. */
export const said = {
  none: 'No answer',
  noSet: 'Give a set.',
  part: (reps: number) => `Made for ${reps} reps, the equations part by`,
  partAll: (reps: number) => `At ${reps} reps all equations part by`,
  single: 'One rep to failure is the one-rep max',
  span: (low: string, high: string, unit: string) => `${low} to ${high} ${unit}`,
  apart: (unit: string) => unit,
  itself: 'Whatever an equation makes of it. Done, not predicted.',
  own: (low: string, high: string, unit: string) =>
    `Windlass believes ${low} to ${high} ${unit} in 8 of 10.`,
  over: (count: number, percent: string) => `${count} equations, ${percent} apart.`,
  overAll: (count: number, percent: string) =>
    `${count} equations, ${percent} apart, next to none made for so many reps.`,
  formula: 'one-rep max = load ÷ the share of it that so many reps stand for',
  step: (name: string, sum: string, kg: string) => `${name}: ${sum} = ${kg} kg`,
  ownStep: (reps: number, percent: string, load: string, kg: string) =>
    `Windlass: ${reps} reps stand for ${percent}; ${load} ÷ that = ${kg} kg, and with the spread between people and days a band.`,
  singleStep: (load: string) => `${load}, once, and no second time: ${load}.`,
  restsOn:
    'Several equations in wide use began as a convention and not as a fit to data. Where they were checked, they missed one person by 3 to 10 %, more for the legs, the arms, the deadlift and older adults. None asks for the tempo.',
  chart: (rows: readonly string[], own: string) =>
    `One-rep max by each equation, least first: ${rows.join('; ')}. ${own}`,
  band: 'Windlass, 8 of 10',
  dots: 'One-rep max by equation; hollow: not made for such a set',
  onlyItself: 'Nothing to compare: the load itself.',
  table: 'Equation by equation',
  columns: { equation: 'Equation', max: 'One-rep max' },
  places: {
    inside: 'made for it',
    'outside-its-range': 'outside its range',
    'other-lift': 'for another lift',
    'breaks-down': 'breaks down here',
  },
  reps: (low: number, high: number) =>
    low === high ? `For ${low} reps.` : `For ${low} to ${high} reps.`,
  shares: (low: string, high: string) => `For ${low} to ${high} of the one-rep max.`,
  noRange: 'States no range.',
  from: (madeFrom: string) => `From ${madeFrom}.`,
  error: (knownError: string) => `Error: ${knownError}.`,
  noNumber: 'none',
  past: {
    what: 'Past ten reps no equation should be relied on.',
    why: 'Endurance ends such a set more than strength does: at 20 reps the equations already differ by more than half.',
    instead: 'Do a set of 3 to 8 reps to failure, and compare that.',
  },
  sets: 'What do several sets say?',
  window: 'Which load fails in a rep window?',
} as const;
