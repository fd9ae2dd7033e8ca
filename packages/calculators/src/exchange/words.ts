import { inSentence } from '@windlass/core/basis';

const capital = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** What the calculator for exchanges says. */
export const said = {
  capital,
  instead: (name: string) => `Instead of: ${inSentence(name)}`,
  area: (area: string) => `For the ${area}`,
  keeps: 'Keep it, set up differently',
  stays: 'Nothing given here speaks against it',
  more: (count: number) => (count === 0 ? '' : `and ${count} more`),
  setUp: (setUps: readonly string[]) => `Set up like this: ${setUps.join(' and ')}.`,
  withSetUps: (name: string, setUps: readonly string[]) => [name, ...setUps].join(', '),
  askFirst: 'Ask first',
  askFirstSays: 'Before anything is exchanged, somebody has to be asked. The reasons stand below.',
  nothing: 'Nothing suitable here',
  nothingSays: 'No exercise passes all limits with what is there, and none is loosened.',
  leftOutOnWish: 'It is to be left out.',
  shared: 'Share of the work on the same muscles',
  ranked: 'In this order',
  drawing: (rows: readonly string[]) =>
    `Share of the work on the same muscles: ${rows.join(', ')}.`,
  row: (name: string, percent: string) => `${inSentence(name)} ${percent}`,
  against: 'Why it cannot stay as it is',
  setUps: 'First, set up differently',
  others: 'Other exercises, best first',
  suggestions: 'Best first, one for each movement',
  keepOthers: 'Others for the same muscles',
  forIt: 'For it',
  againstIt: 'Against it',
  also: (setUps: readonly string[]) => `Fits as well: ${setUps.map(inSentence).join('; ')}.`,
  leftOut: 'Left out, and why',
  askAbout: 'What a clinician could be asked about',
  askAboutSays: (forms: readonly string[]) =>
    `The lightest forms of what is on the list: ${forms.join('; ').toLowerCase()}.`,
  notes: 'With all of these',
  stop: 'Stop the trial at once',
  stopRule: (sign: string, action: string) => `${sign}. ${action}`,
  formula:
    'rank = share of the work on the same muscles, more for the same movement, less for each set-up, position to ease, or load in coarse steps; what is ruled out is never ranked',
  areaFormula:
    'rank = share of the work in that part of the body, more for several joints, less for each set-up, position to ease, or load in coarse steps; what is ruled out is never ranked',
  rank: (name: string, score: string) => `${name}: ${score}`,
  restsOn:
    'How work spreads over muscles and how it is ranked are conventions of this project. What is ruled out comes from the complaint, the clinician’s list and the place.',
  onlyRank: 'Chosen by rule, not predicted.',
  firstLoad: 'Find a first load for it',
} as const;
