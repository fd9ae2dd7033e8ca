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
  leftOut: 'Left out, and why',
  onlyRank: 'Chosen by rule, not predicted.',
  firstLoad: 'Find a first load for it',
} as const;
