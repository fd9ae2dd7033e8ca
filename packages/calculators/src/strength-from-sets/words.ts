/** What the calculator of strength says about its result. */
export const said = {
  nothing: 'No answer',
  noSet: 'Give at least one set.',
  nothingMoves:
    'Nothing moves here. Give a load above 0, or choose an exercise that lifts the body.',
  inSet: (number: number, message: string) => `Set ${number}: ${message}`,
  label: {
    all: {
      likely: 'One-rep max',
      low: 'One-rep max, at least',
      high: 'One-rep max, at most',
    },
    belt: {
      likely: 'On the belt for one rep',
      low: 'On the belt for one rep, at least',
      high: 'On the belt for one rep, at most',
    },
    help: {
      likely: 'Help for one rep',
      low: 'Help for one rep, at most',
      high: 'Help for one rep, at least',
    },
  },
  withBody: (load: string) => `${load} with the body`,
  disagree: (count: number) =>
    count === 1 ? 'One set disagrees with the others.' : `${count} sets disagree with the others.`,
  binding: {
    likely: 'The sets say how much at least and how much at most.',
    low: 'No set went to failure, so nobody knows how much more is there. With a chance of 99 in 100 it is more than this.',
    high: 'No rep was done, so nobody knows how much less it is. With a chance of 19 in 20 it is less than this.',
  },
  endurance: (low: string, high: string) =>
    low === high ? `${low} reps at 80 % of it` : `${low} to ${high} reps at 80 % of it`,
  chartLabel: (unit: string, withBody: boolean) =>
    `What is believed of it, and what each set alone would say, in ${unit}${withBody ? ', body and all' : ''}`,
  chart: (likely: string, low: string, high: string, sets: readonly string[]) =>
    `Belief about the one-rep max: highest near ${likely}, 8 of 10 between ${low} and ${high}. Each set alone: ${sets.join('; ')}.`,
  chartSet: (name: string, low: string, high: string) => `${name}, ${low} to ${high}`,
  set: (load: string, reps: number) => `${load} × ${reps}`,
  off: 'disagrees',
  formula:
    'reps = 1 + κ · (1 − x) ÷ x^α, with x = load ÷ one-rep max and κ the endurance on this lift',
  newest: (name: string, reps: string, percent: string, load: string, kg: string) =>
    `${name}: ${reps} reps to failure stand for ${percent}, and ${load} ÷ that is ${kg}.`,
  together: (count: number, low: string, likely: string, high: string) =>
    `${count === 1 ? 'That set and the spread between people' : count === 2 ? 'Both sets' : `All ${count} sets`} weighed together: ${low} to ${high}, middle ${likely}.`,
  kappa: (low: string, likely: string, high: string, alpha: string) =>
    `Endurance κ = ${likely}, ${low} to ${high} in 8 of 10, at 3 s a rep; α = ${alpha}.`,
  restsOn:
    'Every pair of strength and endurance is weighed by how well it explains all sets: repeat error of a count, people leaving about one rep more than they say, the form of the day, and one set in twenty noted wrongly. Older sets count less. A fresh lifter is assumed in every set.',
  told: 'What each set said',
  columns: { set: 'Set', expected: 'Expected', told: 'Told' },
  ended: {
    failure: 'to failure',
    reserve: (left: number) => `${left} left`,
    more: 'to the target',
  },
  daysAgo: (days: number) => (days === 0 ? 'today' : days === 1 ? 'yesterday' : `${days} days ago`),
  about: (ended: string, when: string) => `${ended}, ${when}`,
  span: (low: string, high: string) => (low === high ? low : `${low} to ${high}`),
  narrowed: (percent: string) => `narrows it by ${percent}`,
  widened: (percent: string) => `widens it by ${percent}`,
  nothingNew: 'nothing new',
  begins: 'the beginning',
  toldNote:
    'Reps to failure that the sets of earlier days let expect, and by how much the set narrowed the belief about the one-rep max. The first day has nothing to be compared with.',
  conflict: 'These sets do not agree',
  slip: (name: string, percent: string) =>
    `${name}: loaded, counted or noted wrongly with a chance of ${percent}.`,
  conflictWhat: [
    'Look first at the load (which bar, which pulley) and at how the set ended.',
    'Another tempo, a part of the way, or a set done tired makes a count that does not compare.',
    'Neither is thrown out: the answer stays wide until one more set decides.',
  ],
  enduranceHead: 'Endurance on this lift',
  enduranceWords: (low: string, high: string, peopleLow: string, peopleHigh: string) =>
    `With 80 % of the one-rep max, at 3 s a rep: ${low} to ${high} reps. Of people on such lifts 8 in 10 lie between ${peopleLow} and ${peopleHigh}.`,
  enduranceNote: 'The wider apart the loads of the sets, the better this is known.',
  oneMore: (load: string) => `One more set with ${load} today, to failure`,
  oneMoreColumns: { reps: 'If it ends at', max: 'One-rep max then', width: 'Band' },
  oneMoreNote: (percent: string) => `The band is ${percent} of the one-rep max wide now.`,
  repsWords: (reps: number) => (reps === 1 ? '1 rep' : `${reps} reps`),
  notATest: {
    what: 'This is no call to try it.',
    why: 'A single at the limit asks for practice in the lift, a way out of it and a warm-up of its own; nothing that is planned here needs one.',
    instead: 'A set of 3 to 8 reps to failure tells nearly as much.',
  },
  log: 'What does the log say, and what next?',
  window: 'Which load fails in a rep window?',
  equations: 'What do published equations make of the last set?',
  belt: 'Which loads can the belt make?',
} as const;
