import { inSentence } from '@windlass/core/basis';

/** What the calculator for exchanges says below its answer. */
export const below = {
  against: 'Why it cannot stay as it is',
  setUps: 'First, set up differently',
  others: 'Other exercises, best first',
  suggestions: 'Best first, one for each movement',
  keepOthers: 'Others for the same muscles',
  forIt: 'For it',
  againstIt: 'Against it',
  also: (setUps: readonly string[]) => `Fits as well: ${setUps.map(inSentence).join('; ')}.`,
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
} as const;
