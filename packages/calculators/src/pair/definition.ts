import { loadFromValue } from '@windlass/core/load';
import { formatTempo } from '@windlass/core/tempo';
import type { Certainty, NextLink } from '../contract/Answer.ts';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { HEALTH_NOT_ASKED } from '../shared/cautions.ts';
import { inUnit } from '../shared/inUnit.ts';
import { loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { computePair, type PairResult } from './compute.ts';
import { PairDetails } from './details.tsx';
import { exactOf } from './exactOf.ts';
import { fields, groups, type PairInputs } from './fields.ts';
import { snippet } from './snippet.ts';
import { suggestions } from './suggestions.ts';
import { PairView } from './view.tsx';
import { whyPair } from './why.ts';
import { said } from './words.ts';

export const pair = defineCalculator({
  id: 'pair',
  title: 'Isolation, then compound',
  question: 'What does the isolation lift do to the compound after it?',
  fields,
  groups,
  compute: computePair,
  headline: (input, { forecast }) => ({
    label: input.ask === 'load' ? said.loadFor(input.usualReps) : said.repsWith(usualWords(input)),
    value: formatNumber(exactOf(input, forecast), 1),
    unit: input.ask === 'load' ? input.show : said.reps,
    also: said.usually(
      input.ask === 'load'
        ? loadWords(loadFromValue(input.usualLoad), input.show)
        : String(input.usualReps),
    ),
    exact: exactOf(input, forecast),
  }),
  certainty,
  why: whyPair,
  cautions: (_, { forecast }) => [...forecast.cautions, HEALTH_NOT_ASKED],
  sources: (_, { forecast }) => forecast.sources,
  next: nextLinks,
  snippet,
  view: (_, result) => PairView({ result }),
  details: (input, result) => PairDetails({ input, result }),
});

function usualWords({ usualLoad }: PairInputs): string {
  return loadWords(loadFromValue(usualLoad), usualLoad.unit);
}

function certainty(input: PairInputs, { forecast }: PairResult): Certainty {
  if (input.ask === 'reps') {
    return { kind: 'band', band: forecast.repsAtUsualLoad, unit: said.reps, says: said.band };
  }
  const { low, likely, high, level } = forecast.loadKg;
  const inShown = (kg: number) => inUnit(kg, input.show);
  const band = { low: inShown(low), likely: inShown(likely), high: inShown(high), level };
  return { kind: 'band', band, unit: input.show, says: said.band };
}

function nextLinks(
  input: PairInputs,
  { compound, target, forecast }: PairResult,
): readonly NextLink[] {
  const kg = Math.max(1, Math.round(forecast.loadKg.likely * 10) / 10);
  const reps =
    input.ask === 'load' ? input.usualReps : Math.max(1, forecast.repsAtUsualLoad.likely);
  const tempo = formatTempo(input.compoundTempo);
  return [
    ...suggestions(input, target),
    ...(compound.loads.includes('barbell') && input.ask === 'load'
      ? [
          {
            calculator: 'bar-loading',
            label: said.loadTheBar(`${kg} kg`),
            carry: { target: `${kg}kg` },
          },
        ]
      : []),
    {
      calculator: 'tempo-seconds',
      label: said.howLong,
      carry: { tempo, reps: String(reps), starts: compound.startsWith },
    },
  ];
}
