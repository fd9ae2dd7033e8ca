/** What the calculator of the next date says about its result. */
export const said = {
  forNext: 'The next session',
  headlineNext: 'Next session',
  headlineSame: 'The same muscles again',
  likely: (hours: string) => `likely, ${hours} h after the start`,
  anyTime: 'At any time',
  nothingShared: 'It trains no muscle that this session has trained.',
  noDate: 'No date',
  tooMuch:
    'So many sets for one muscle lie far beyond everything that was measured. Check the sets.',
  band: (earliest: string, cautious: string) => `From ${earliest} to ${cautious}.`,
  hours: 'h',
  stripLabel: (hasPlan: boolean) =>
    `Solid: hardly anyone is ready. Shaded: 1 in 10 to 9 in 10. Dot: 5 in 10.${hasPlan ? ' Dashed: as planned.' : ''}`,
  strip: (muscles: readonly string[]) => `When each muscle is ready again. ${muscles.join(' ')}`,
  muscleWhen: (name: string, earliest: string, likely: string, cautious: string) =>
    `${name}: earliest ${earliest}, likely ${likely}, cautious ${cautious}.`,
  planned: 'The planned start',
  plannedBad: (when: string) => `${when} does not lie after the session.`,
  plannedEarly: (when: string, muscles: string) =>
    `${when} is before the earliest time for ${muscles}.`,
  plannedLikely: (when: string, muscles: string) =>
    `${when} is before the likely time for ${muscles}. Some people are ready by then; this one rather not.`,
  plannedBetween: (when: string, muscles: string) =>
    `${when} is after the likely time for every muscle, and before the cautious one for ${muscles}.`,
  plannedLate: (when: string) => `${when} is after the cautious time for every muscle.`,
  plannedMove: 'Or put what needs these muscles on a later day, and train the others then.',
  holds: 'What holds it back',
  holdsColumns: { muscle: 'Muscle', likely: 'Likely', span: 'Earliest to cautious' },
  span: (earliest: string, cautious: string) => `${earliest} to ${cautious}`,
  worked: (exercises: string) => `after ${exercises}`,
  shared: (exercises: string) => `before ${exercises}`,
  helps: (exercise: string) => `${exercise} (helps)`,
  list: (names: readonly string[]) =>
    names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`,
  holdsNote:
    'The next session is held back by muscles, not by its name. A muscle that helps counts half a set.',
  free: (muscles: string) => `Trained then, and not this time: ${muscles}.`,
  effects: 'What the reports do',
  effectsNone: 'No report changes the hours.',
  effectFor: (muscle: string, says: string) => `${muscle}: ${says}`,
  again: 'The same session again',
  againColumns: { time: 'Time', likely: 'Likely', span: 'Earliest to cautious' },
  times: ['never done before', 'a second time, a week later', 'a third time', 'a fourth time'],
  timesFamiliar: 'once it is familiar',
  againNote: (muscle: string) =>
    `For ${muscle}, in hours from the start, by how often such work was done before. The first bout costs most, and protects the muscle from the next.`,
  hoursWords: (hours: string) => `${hours} h`,
  notCounted: 'What is not counted, and why',
  formula:
    'ln hours = 2.9 + 0.79 · ln(hard sets) − 0.11 for someone used to training; then the reports',
  dose: (muscle: string, counted: string, hard: string) =>
    `${muscle}: ${counted} sets, which count as ${hard} familiar sets to failure.`,
  base: (hard: string, trained: boolean, hours: string) =>
    `e^(2.9 + 0.79 · ln ${hard}${trained ? ' − 0.11' : ''}) = ${hours} h`,
  factor: (says: string, factor: string, hours: string) => `× ${factor} = ${hours} h. ${says}`,
  spread: (times: string) =>
    `Earliest and cautious: divided and multiplied by ${times}, so that 8 in 10 lie between.`,
  restsOn:
    'Fitted to what 24 studies saw as bounds: last seen impaired, first seen recovered. Ready means for work as hard again. Sets are counted by muscle, a helper as half. The sizes of the report effects are a choice of this project.',
  sign: (action: string) => action,
  severe: 'Severe soreness was reported. These signs ask for help instead of waiting.',
  calendar: 'Which days do the sessions go on?',
  log: 'What does the log say, and what next?',
} as const;
