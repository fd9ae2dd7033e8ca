// What a page without a bundler writes: every entry by its name, found by the import map.
import '@windlass/calculators/element';
import { calculators } from '@windlass/calculators';
import { lb, toKg } from '@windlass/core';
import { calendarFile } from '@windlass/core/recovery';
import { readGym } from '@windlass/core/schema';

const entries = JSON.parse(document.querySelector('script[type=importmap]').textContent).imports;
const own = Object.keys(entries).filter((name) => name.startsWith('@windlass/'));
const modules = await Promise.all(own.map((name) => import(name)));
const results = calculators.filter((calculator) => calculator.answer({}).kind === 'result');
const gym = readGym({
  name: 'Boathouse',
  plates: [],
  equipment: [{ kind: 'band', id: 'band', name: 'Band' }],
});

globalThis.met = {
  pound: toKg(lb(1)),
  entries: own.length,
  empty: own.filter((_, at) => Object.keys(modules[at]).length === 0),
  calculators: calculators.length,
  results: results.length,
  gym: gym.ok,
  calendar: typeof calendarFile,
};
