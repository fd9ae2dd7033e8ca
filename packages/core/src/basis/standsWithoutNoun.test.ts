import { expect, it } from 'vitest';
import { standsWithoutNoun } from './standsWithoutNoun.ts';

it.each([
  'Mit Zughilfen',
  'Zum Kinn gezogen, Hände auf Höhe der Ellbogen',
  'Breite Stange im Obergriff',
  'Oberer Trapez',
])('"%s" begins with no noun', (name) => {
  expect(standsWithoutNoun(name)).toBe(true);
});

it.each(['Handflächen zueinander', 'Seil, Hammergriff', 'Beinpresse', 'Bisher', ''])(
  '"%s" begins with a noun, or with nothing else to tell by',
  (name) => {
    expect(standsWithoutNoun(name)).toBe(false);
  },
);
