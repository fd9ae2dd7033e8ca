import { loadFromValue, toKg } from '@windlass/core/load';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { loadText } from '../fields/fieldText.ts';
import { weightOfBar } from '../shared/barFields.ts';
import { barTexts } from '../shared/barTexts.ts';
import { distanceWords, loadFace, loadWords, pieceWords } from '../shared/loadWords.ts';
import { plateWords } from '../shared/plateWords.ts';
import { POUND, PROJECT_CHOICE } from '../shared/sources.ts';
import { targetStep } from '../shared/targetStep.ts';
import { type BarLoadingInput, type BarLoadingResult, computeBarLoading } from './compute.ts';
import { fields, groups } from './fields.ts';
import { snippet } from './snippet.ts';
import { BarLoadingDetails, BarLoadingView } from './view.tsx';
import { said } from './words.ts';

export const barLoading = defineCalculator({
  id: 'bar-loading',
  title: 'Loading the bar',
  question: 'Which of these plates go on each side, and how near does that come?',
  fields,
  groups,
  compute: computeBarLoading,
  headline: ({ show }, { chosen }) => ({
    label: said.loadTo,
    ...loadFace(chosen.load, show),
  }),
  certainty: (input, result) => ({ kind: 'exact', says: certaintyWords(input, result) }),
  why: (input, { chosen, side }) => ({
    formula: said.formula,
    steps: [
      said.sum(
        pieceWords(weightOfBar(input)),
        pieceWords(input.collar),
        plateWords(side),
        loadWords(chosen.load, input.show),
      ),
      said.fewest(side.length * 2),
    ],
    restsOn: said.restsOn,
  }),
  cautions: (input, { side }) => {
    const onOneSide = side.reduce((sum, { weight }) => sum + loadFromValue(weight), 0);
    if (onOneSide <= loadFromValue(weightOfBar(input))) return [];
    return [
      { id: 'strip-by-turns', level: 'note', ...said.tips, ask: [], sources: [PROJECT_CHOICE] },
    ];
  },
  sources: () => [POUND],
  next: (input, { chosen }) => [
    {
      calculator: 'warm-up-ramp',
      label: said.warmUp(loadWords(chosen.load, input.show)),
      carry: { work: loadText({ value: toKg(chosen.load), unit: 'kg' }), ...barTexts(input) },
    },
  ],
  snippet,
  view: (input, result) => BarLoadingView({ input, result }),
  details: (input, result) => BarLoadingDetails({ input, result }),
  stepLoad: (name, input, direction) =>
    name === 'target'
      ? targetStep(input.target, weightOfBar(input), input.plates, direction)
      : null,
});

function certaintyWords(input: BarLoadingInput, { chosen, target, above }: BarLoadingResult) {
  if (chosen.load === target) return said.exact;
  const off = distanceWords(chosen.load, target, input.show);
  return above === null && chosen.load < target ? said.allOn(off) : said.between(off);
}
