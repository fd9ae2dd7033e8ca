/** What the search for a first load says. */
export const said = {
  noLoad: 'No load',
  weighsNothing: 'Nothing here weighs anything.',
  tooHeavy: 'Too heavy here',
  takeLighter: (lightest: string) =>
    `Even ${lightest}, the lightest here, is too much for these reps. Take lighter equipment, an easier form of the lift, or a window of fewer reps.`,
  what: { bar: 'bar', dumbbells: 'each dumbbell', stack: 'stack number' },
  trial: (count: number, what: string) => `Trial set ${count}: ${what}`,
  work: (what: string) => `Found, to work with: ${what}`,
  start: (what: string) => `To start work with: ${what}`,
  atTheHandle: (load: string) => `${load} at the handle`,
  upTo: (reps: number) => `up to ${reps} reps`,
  stopEarly: (reps: number, left: number) =>
    `Do ${reps} reps, and stop before that when only ${left} are left. Then add the set below.`,
  because: {
    'start-light': 'The lightest load there is, whoever the lifter is.',
    'large-step': 'A large step: the last one was easy.',
    'small-step': 'A small step: the last one was near.',
    down: 'Down: form comes before load.',
  },
  found: (low: number, high: number, hundredths: string) =>
    `Failure falls within ${low} to ${high} in ${hundredths} of 100.`,
  learn: (low: number, high: number, hundredths: string) =>
    `No further trial set. Stop short of failure, which comes before ${low} in ${hundredths} of 100; a load that gives more than ${high} goes up.`,
  formula:
    'next load = the heaviest that can be made, up to the load for the window, up to the step that the last report allows, and failing too soon in at most 1 of 10',
  none: 'No set yet: nothing is taken from body weight, age or sex, and no maximum is tried.',
  allowed: (last: string, factor: string, most: string) =>
    `After ${last} and such a report: at most × ${factor}, ${most}.`,
  downFrom: (last: string) => `After poor form or failure with ${last}: down.`,
  max: (low: string, high: string) =>
    `The sets so far leave the one-rep max between ${low} and ${high} kg in 8 of 10.`,
  window: (low: number, high: number, seconds: string, from: string, to: string) =>
    `${low} to ${high} reps of ${seconds} s ask for ${from} to ${to} of it.`,
  restsOn:
    'Coaches agree on such a search, light first and short of failure; its step sizes are a choice of this project. The rep curve is that of people measured, the answer that of this lifter alone.',
  chart: (sets: readonly string[], next: string) =>
    sets.length === 0
      ? `No trial set yet; first ${next}.`
      : `Trial sets so far: ${sets.join('; ')}. Next ${next}.`,
  chartSet: (load: string, reps: number, felt: string) => `${load}, ${reps} reps, ${felt}`,
  loadIn: (unit: string) => `Load in ${unit}, reps, and how it felt`,
  next: 'next',
  workSet: 'work',
  after: 'What this set will lead to',
  columns: { felt: 'It felt', next: 'Next load' },
  stays: 'work with this one',
  trialAgain: (load: string) => `try ${load}`,
  workWith: (load: string) => `work with ${load}`,
  lighterGear: 'lighter equipment',
  afterNote:
    'If all reps are done. Failure ends the set at once: write down the reps that were in good form.',
  how: 'How to do it',
  steps: [
    'Rest two minutes or more between trial sets.',
    'Keep the tempo that is asked for; a rep that loses it or its form does not count.',
    'Judge at the last rep: how many more would have been possible in the same form?',
  ],
  lightest: {
    what: 'A trial set stops with reps left.',
    why: 'The search needs a judgement, not a maximum; the first sets of a lift teach its form.',
    instead: 'When the form breaks, end the set and choose “form broke”.',
  },
  loadForWindow: 'Enter the work sets as they come',
  warmUp: 'Warm up to it',
  loadTheBar: (load: string) => `Load the bar to ${load}`,
} as const;
