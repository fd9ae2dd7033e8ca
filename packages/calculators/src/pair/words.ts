/** What the calculator for pairs says about its result. */
export const said = {
  noPair: 'No pair',
  wrongPace: 'A repetition takes from 1 to 60 s here. Change the tempo.',
  loadFor: (reps: number) =>
    `Load for ${reps} ${reps === 1 ? 'rep' : 'reps'} after the isolation set`,
  repsWith: (load: string) => `Reps with ${load} after the isolation set`,
  usually: (figure: string) => `usually ${figure}`,
  reps: 'reps',
  band: 'That it gets worse is sure; by how much is not.',
  left: 'Strength left by muscle at its first rep; the stroke is without the isolation set',
  drawing: (muscles: readonly string[]) => `Strength left: ${muscles.join(', ')}.`,
  muscle: (name: string, left: string) => `${name} ${left}`,
  partOf: (percent: string) => `${percent} of the lift`,
  rounds: 'Round by round',
  columns: {
    round: 'Round',
    isolation: 'First reps',
    load: 'Load',
    reps: 'Or reps',
    left: 'Left',
  },
  span: (low: string, high: string) => (low === high ? low : `${low} to ${high}`),
  spent: (round: number, why: string) => `No round ${round}: ${why}`,
  roundsSay: (rest: number) =>
    `Likely, and what 8 of 10 lie between, with ${rest} s of rest between rounds. The isolation set keeps its load, so its reps fall. For the compound lift: the lighter load, or the reps with the usual one, and the strength left before its first rep.`,
  correct: 'After the first try',
  correctSays: (percent: string) =>
    `Change the load by ${percent} for each rep more or fewer than wanted, and go by that from then on.`,
  formula:
    'strength left of the lift = without it − 0.6 · (without it − Σ part of the muscle × strength left of the muscle)',
  takes: (name: string, reps: number, percent: string) =>
    `${name}, ${reps} ${reps === 1 ? 'rep' : 'reps'}: takes ${percent} of the strength of the exercise, by muscle in proportion to its part.`,
  isBack: (seconds: number, percent: string) =>
    `After ${seconds} s, 1 − e^(−0.01365 · ${seconds}) = ${percent} of the passing part of it is back.`,
  liftLeft: (name: string, percent: string, without: string) =>
    `${name}: ${percent} left instead of ${without}.`,
  followsLoad: (reps: number, share: string) =>
    `Load that fails at ${reps} reps from there: ${share} of the usual one.`,
  restsOn:
    'Trials agree that the second lift gets worse and do not say by how much; of what the first takes, the likely value lets 0.6 show in the second, the band a tenth to all of it. How work spreads over muscles is a convention.',
  refusedLabel: 'These two as a pair',
  refused: 'Not offered',
  refusedSays: 'It would not do what a pair is for. Why not stands below.',
  why: 'Why not',
  allReasons: 'Everything against it',
  onePlace: (first: string, second: string) => `At one spot: ${first}, then ${second}`,
  loadTheBar: (load: string) => `Load the bar to ${load}`,
  howLong: 'How long is the second set?',
} as const;
