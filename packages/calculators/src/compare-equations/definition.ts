import { formatTempo } from '@windlass/core/tempo';
import type { Certainty, Headline } from '../contract/Answer.ts';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { loadText } from '../fields/fieldText.ts';
import { inUnit } from '../shared/inUnit.ts';
import { loadFace } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import { computeEquations, type EquationsResult, MOST_REPS } from './compute.ts';
import { EquationsDetails } from './details.tsx';
import { exactOf } from './exactOf.ts';
import { type EquationsInput, fields, groups } from './fields.ts';
import { snippet } from './snippet.ts';
import { sourcesOf } from './sourcesOf.ts';
import { EquationsView } from './view.tsx';
import { whyOf } from './whyOf.ts';
import { said } from './words.ts';

export const compareEquationsCalculator = defineCalculator({
  id: 'compare-equations',
  title: 'One-rep-max equations side by side',
  question: 'How far do the published one-rep-max equations part on my set?',
  fields,
  groups,
  compute: computeEquations,
  headline: headlineOf,
  certainty: certaintyOf,
  why: whyOf,
  cautions: ({ reps }) =>
    reps > MOST_REPS
      ? [
          {
            id: 'above-ten-reps',
            level: 'caution',
            ...said.past,
            ask: [],
            sources: [SPREAD_AT_TWENTY],
          },
        ]
      : [],
  sources: (_, result) => sourcesOf(result),
  next: ({ load, reps, tempo }) => {
    const pace = tempo ? formatTempo(tempo) : '';
    return [
      {
        calculator: 'load-for-window',
        label: said.window,
        carry: { sets: [loadText(load), reps, pace, 'failure', 0].join('_') },
      },
    ];
  },
  snippet,
  view: (input, result) => EquationsView({ input, result }),
  details: (input, result) => EquationsDetails({ input, result }),
});

const SPREAD_AT_TWENTY = {
  id: 'one-rm-equations-test-vectors',
  citation:
    'The general equations evaluated at 20 repetitions: the load is 47 to 74 % of the one-rep max.',
  standing: 'derived',
} as const;

function headlineOf(input: EquationsInput, result: EquationsResult): Headline {
  const { reps, show } = input;
  const { spread, isInside, set } = result;
  const exact = exactOf(input, result);
  if (spread === null) return { label: said.single, ...loadFace(set.load, show) };
  const figure = (kg: number) => formatNumber(inUnit(kg, show), 0);
  return {
    label: isInside ? said.part(reps) : said.partAll(reps),
    value: formatNumber(exact, exact < 100 ? 1 : 0),
    unit: show,
    also: said.span(figure(spread.lowestKg), figure(spread.highestKg), show),
    exact,
  };
}

function certaintyOf(
  { show }: EquationsInput,
  { spread, isInside, own }: EquationsResult,
): Certainty {
  if (spread === null || own === null) return { kind: 'exact', says: said.itself };
  const percent = formatPercent(spread.share);
  const over = isInside ? said.over : said.overAll;
  const figure = (kg: number) => formatNumber(inUnit(kg, show), 0);
  return {
    kind: 'exact',
    says: `${over(spread.equations, percent)} ${said.own(figure(own.low), figure(own.high), show)}`,
  };
}
