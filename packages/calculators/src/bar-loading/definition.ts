import { loadFromValue } from '@windlass/core/load';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { weightOfBar } from '../shared/barFields.ts';
import { distanceWords, loadFace, loadWords, pieceWords } from '../shared/loadWords.ts';
import { plateWords } from '../shared/plateWords.ts';
import { POUND, PROJECT_CHOICE } from '../shared/sources.ts';
import { targetStep } from '../shared/targetStep.ts';
import { type BarLoadingInput, type BarLoadingResult, computeBarLoading } from './compute.ts';
import { fields, groups } from './fields.ts';
import { snippet } from './snippet.ts';
import { BarLoadingDetails, BarLoadingView } from './view.tsx';

export const barLoading = defineCalculator({
  id: 'bar-loading',
  title: 'Loading the bar',
  question: 'Which of these plates go on each side, and how near does that come?',
  fields,
  groups,
  compute: computeBarLoading,
  headline: ({ show }, { chosen }) => ({
    label: 'Load the bar to',
    ...loadFace(chosen.load, show),
  }),
  certainty: (input, result) => ({ kind: 'exact', says: certaintyWords(input, result) }),
  why: (input, { chosen, side }) => ({
    formula: 'load = bar + 2 × collar + 2 × (plates on one side)',
    steps: [
      `${pieceWords(weightOfBar(input))} + 2 × ${pieceWords(input.collar)} + 2 × (${plateWords(side) || '0'}) = ${loadWords(chosen.load, input.show)}`,
      `${side.length * 2} pieces, the fewest that make this load; heavy ones inside.`,
    ],
    restsOn:
      'Whole numbers of 10 ng, so nothing is rounded before it is shown. Cast plates are often some percent off their mark; what is written on them is taken as true.',
  }),
  cautions: (input, { side }) => {
    const onOneSide = side.reduce((sum, { weight }) => sum + loadFromValue(weight), 0);
    if (onOneSide <= loadFromValue(weightOfBar(input))) return [];
    return [
      {
        id: 'strip-by-turns',
        level: 'note',
        what: 'On hooks, a bar tips when one side is stripped.',
        why: `With more on one side than the bar weighs, the far end can come up.`,
        instead: 'Load and unload by turns, one piece a side at a time.',
        ask: [],
        sources: [PROJECT_CHOICE],
      },
    ];
  },
  sources: () => [POUND],
  next: () => [],
  snippet,
  view: (input, result) => BarLoadingView({ input, result }),
  details: (input, result) => BarLoadingDetails({ input, result }),
  stepLoad: (name, input, direction) =>
    name === 'target'
      ? targetStep(input.target, weightOfBar(input), input.plates, direction)
      : null,
});

function certaintyWords(input: BarLoadingInput, { chosen, target, above }: BarLoadingResult) {
  if (chosen.load === target) return 'Exactly what was asked for: counted, not predicted.';
  const off = distanceWords(chosen.load, target, input.show);
  return above === null && chosen.load < target
    ? `${off} what was asked for: everything that pairs up is on.`
    : `${off} what was asked for; no plates here make it exactly.`;
}
