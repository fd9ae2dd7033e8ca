import { expect, it } from 'vitest';
import { type Limits, limitsFor } from '../safety/index.ts';
import type { ExchangeSetting } from './Exchange.ts';
import { exchangeNotes } from './exchangeNotes.ts';

const free = limitsFor({}, { intensity: 'vigorous', alone: false, date: '2027-03-15' });
const codesWith = (change: Partial<Limits>) =>
  exchangeNotes({ limits: { ...free, ...change } } as ExchangeSetting).map(({ code }) => code);

it('goes with nothing where nothing is limited', () => {
  expect(codesWith({})).toEqual([]);
});

it('says what each limit asks for', () => {
  expect(codesWith({ painLimit: 3 })).toEqual(['pain-limit']);
  expect(codesWith({ notAllowed: ['leg press'] })).toEqual(['back-with-the-clinician']);
  expect(codesWith({ handsOutOfUse: ['left'] })).toEqual(['ask-at-each-phase']);
});
