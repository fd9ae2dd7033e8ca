import { supportedBodyWeight } from '@windlass/core/exchange';
import { loadFromValue, toKg } from '@windlass/core/load';
import { generalCurve } from '@windlass/core/strength';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { loadText } from '../fields/fieldText.ts';
import { barTexts } from '../shared/barTexts.ts';
import { gearTexts } from '../shared/gearTexts.ts';
import { loadWords } from '../shared/loadWords.ts';
import { POUND } from '../shared/sources.ts';
import { certaintyOf } from './certaintyOf.ts';
import { computeGymLoads, type GymResult } from './compute.ts';
import { GymDetails } from './details.tsx';
import { PUSH_UPS } from './equipmentOf.ts';
import { fields, type GymInput, groups } from './fields.ts';
import { headlineOf } from './headlineOf.ts';
import { snippet } from './snippet.ts';
import { GymView } from './view.tsx';
import { whyOf } from './whyOf.ts';
import { said } from './words.ts';

export const gymLoads = defineCalculator({
  id: 'gym-loads',
  title: 'Loads the gym can make',
  question: 'What can this equipment make, and how large are its steps?',
  fields,
  groups,
  compute: computeGymLoads,
  headline: headlineOf,
  certainty: certaintyOf,
  why: whyOf,
  cautions: () => [],
  sources: (input, { chosen }) => [
    POUND,
    ...(chosen?.up?.kind === 'step' ? chosen.up.sources : []),
    ...(chosen?.reps ? generalCurve.sources : []),
    ...(input.gear === 'body' && input.moves !== 'all'
      ? supportedBodyWeight(PUSH_UPS[input.moves], toKg(loadFromValue(input.bodyWeight))).sources
      : []),
  ],
  next: nextOf,
  snippet,
  view: (input, result) => GymView({ input, result }),
  details: (input, result) => GymDetails({ input, result }),
});

function nextOf(input: GymInput, { chosen }: GymResult) {
  const { gear } = input;
  if (gear !== 'bar' && gear !== 'dumbbells' && gear !== 'stack') return [];
  const carry = gearTexts({ ...input, gear });
  const onward = [
    { calculator: 'load-for-window', label: said.window, carry },
    { calculator: 'first-load', label: said.first, carry },
  ];
  if (gear !== 'bar' || chosen === null) return onward;
  const target = loadText({ value: toKg(chosen.load.load), unit: 'kg' });
  const label = said.loadTheBar(loadWords(chosen.load.load, input.show));
  return [{ calculator: 'bar-loading', label, carry: { target, ...barTexts(input) } }, ...onward];
}
