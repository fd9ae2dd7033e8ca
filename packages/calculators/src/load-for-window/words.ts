/** What the calculator for a rep window says about its result. */
export const said = {
  what: { bar: 'Bar load', dumbbells: 'Each dumbbell,', stack: 'Stack number' },
  headline: (what: string, low: number, high: number, tempo: string) =>
    `${what} to fail in ${low === high ? low : `${low} to ${high}`} at ${tempo}`,
  atTheHandle: (load: string) => `${load} at the handle`,
  fallsWithin: (low: number, high: number, hundredths: string) =>
    `Failure falls within ${low} to ${high} in ${hundredths} of 100.`,
  formula:
    'reps = 1 + κ · (1 − x) ÷ x^α, with κ = κ₃ · (seconds a rep ÷ 3)^−0.55 and x = load ÷ one-rep max',
  max: (likely: string, low: string, high: string, kappa: string, alpha: string) =>
    `One-rep max today: ${likely} kg, ${low} to ${high} in 8 of 10; κ₃ = ${kappa}, α = ${alpha}.`,
  pace: (tempo: string, seconds: string, kappa: string, atPace: string) =>
    `${tempo} is ${seconds} s a rep: κ = ${kappa} · (${seconds} ÷ 3)^−0.55 = ${atPace}.`,
  asks: (low: number, high: number, share: string, from: string, to: string, kg: string) =>
    `The middle of ${low} to ${high} reps asks for x = ${share} (${from} to ${to}): ${kg} kg.`,
  best: (inside: string, before: string, beyond: string) =>
    `Of the loads that can be made, this one has the best chance, ${inside}; ${before} end sooner, ${beyond} later.`,
  binding: {
    'prior-only': 'No set binds the strength yet.',
    'floor-only':
      'No set went to failure, so the sets only say how strong the lifter is at least. One set to failure narrows this more than ten without.',
    'ceiling-only':
      'Only a failed lift is known, so the sets only say how strong the lifter is at most.',
    'both-sides': 'The sets bind the strength from both sides.',
  },
  restsOn: (binding: string) =>
    `${binding} Repeated sets differ by half a rep and more, people at one share of their max by a third; both are in the band. A fresh lifter is assumed.`,
  heavier: {
    what: 'Heavier than any set that was given.',
    why: 'From many light reps to a few heavy ones people differ widely, and the form of a heavy rep has to be learned.',
    beginWith: (load: string) => `Begin with ${load}`,
    beginLighter: 'Begin lighter',
    instead: (start: string) => `${start}, count, enter that set here, and go by the new answer.`,
  },
  log: 'What does the log say, and what next?',
  howLong: 'How long is that set?',
  warmUp: 'Warm up to it',
  loadTheBar: 'Load the bar',
  noLoad: 'No load',
  noSet: 'Give at least one set.',
  noWeight: 'Nothing here weighs anything.',
  near: {
    headline: {
      'all-too-heavy': 'All too heavy',
      'all-too-light': 'All too light',
      gap: 'Falls in a gap',
    },
    bridge: {
      'all-too-heavy': 'Widen the window downwards or take lighter equipment.',
      'all-too-light': 'Widen the window upwards, slow the tempo, or use one side at a time.',
      gap: 'Widen the window, or change the tempo: slower makes the lighter one fit.',
    },
    gives: (load: string, reps: string) => `${load} gives about ${reps} reps`,
    message: (nearest: readonly string[], bridge: string) => `${nearest.join('; ')}. ${bridge}`,
  },
  chanceByLoad: (unit: string) => `Chance to fail within the window, by load in ${unit}`,
  chart: (low: number, high: number, load: string, percent: string) =>
    `Chance that failure falls within ${low} to ${high} reps, by load: highest at ${load} with ${percent}. The table below has the figures.`,
  around: 'Loads around it',
  columns: { load: 'Load', soon: 'Too soon', inside: 'Inside', beyond: 'Beyond', reps: 'Reps' },
  firstTry: 'For a first try',
  lighter: 'Next lighter',
  bestChance: 'Best chance',
  nextHeavier: 'Next heavier',
  row: (name: string, loading: string) => `${name}: ${loading}`,
  span: (low: string, high: string) => `${low} to ${high}`,
  weighed: (shown: number, total: number) =>
    `Reps to failure: likely, and what 8 of 10 sets lie between. Here ${shown} of ${total} loads were weighed up.`,
  weighedFew: (shown: number, total: number, pieces: number) =>
    `Reps to failure: likely, and what 8 of 10 sets lie between. Here ${shown} of ${total} loads were weighed up, those with at most ${pieces} pieces to carry.`,
  second: 'The set, second by second',
  crosses: (seconds: string) =>
    `At ${seconds} s a rep the lift fails where what is left crosses what the load asks.`,
  asksThisMuch: 'the load asks for this much',
  capacity: (percent: string, seconds: string) =>
    `Strength left falls from 100 % and meets the ${percent} that the load asks for after about ${seconds} s.`,
  doubts: 'What weakens this forecast',
} as const;
