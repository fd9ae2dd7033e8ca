/** What the ramp calculator says about its result. */
export const said = {
  to: (load: string) => `To ${load}, in`,
  toNearest: (load: string) => `To ${load}, the nearest that can be made, in`,
  sets: (count: number) => (count === 1 ? 'set' : 'sets'),
  inAll: (reps: number, minutes: string) => `${reps} reps, ${minutes} min`,
  strengthLeft: 'That much of the strength is left at the first work rep.',
  formula:
    'least sum of (load − wished load)² and pieces moved, over the whole ramp; jumps shrink towards the work load',
  share: (reps: number, percent: string) =>
    `${reps} ${reps === 1 ? 'rep' : 'reps'} possible: the work load is about ${percent} of the one-rep max.`,
  steps: (percents: readonly string[], load: string) =>
    `Steps at ${percents.join(', ')} of ${load}.`,
  pieces: (count: number) => `${count} pieces moved, from the empty equipment and back to it.`,
  restsOn:
    'Trials agree that few reps near the work load help the first set a little and that many reps cost some. None gives data on injuries. The shape of the ramp is a convention.',
  loadTheBar: (load: string) => `Load the bar to ${load}`,
  noLoad: 'No load',
  noRamp: 'No ramp',
  notNeeded: 'No ramp needed',
  columns: (unit: string) => `Load in ${unit}, and reps`,
  set: (load: string, reps: number | null) => (reps === null ? load : `${load}, ${reps} reps`),
  drawing: (sets: readonly string[]) => `The ramp: ${sets.join('; ')} for the work sets.`,
  bar: (load: string, loading: string) => `${load}, ${loading}.`,
  setBySet: 'Set by set',
  rest: (seconds: string) => `Then ${seconds} s of rest.`,
  afterwards: (change: string, pieces: number, minutes: string) =>
    `Afterwards: ${change}. ${pieces} pieces moved in all, ${minutes} min from the first change to the first work rep.`,
  leftOut: 'The rep above the work load is left out',
  cost: 'What the ramp costs',
  costIs: 'Strength left, from the first warm-up rep to the first work rep.',
  asksThisMuch: 'the work load asks for this much',
  capacity: (left: string, asked: string) =>
    `Strength left dips with each warm-up set, comes back in the rests, and is ${left} at the first work rep, which asks for ${asked}.`,
  names: {
    circulation: 'For the blood: easy.',
    rehearsal: 'For the movement: as the work set will be.',
    primer: 'For the load: near it, and few.',
    'above the work load': 'Above the work load: one rep, as was asked for.',
    work: 'The work set.',
  },
} as const;
