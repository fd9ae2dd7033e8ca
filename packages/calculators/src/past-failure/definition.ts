import type { Band } from '@windlass/core/basis';
import { loadFromValue, toKg } from '@windlass/core/load';
import { formatTempo } from '@windlass/core/tempo';
import type { NextLink } from '../contract/Answer.ts';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { loadText, windowText } from '../fields/fieldText.ts';
import { workText } from '../shared/workText.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { type ChainResult, computeChain } from './compute.ts';
import { ChainDetails } from './details.tsx';
import { type ChainInput, fields, groups } from './fields.ts';
import { snippet } from './snippet.ts';
import { ChainView } from './view.tsx';
import { whyChain } from './why.ts';
import { said } from './words.ts';

export const pastFailure = defineCalculator({
  id: 'past-failure',
  title: 'Past lifting failure',
  question: 'How far does this set go past lifting failure?',
  fields,
  groups,
  compute: computeChain,
  headline: (_, { forecast: { secondsUnderLoad, dose } }) => ({
    label: said.headline,
    value: formatNumber(secondsUnderLoad.likely, 0),
    unit: 's',
    also: said.costs(formatNumber(dose.hardSets)),
    exact: secondsUnderLoad.likely,
  }),
  certainty: (_, { forecast, stages }) => ({
    kind: 'band',
    band: wholeSeconds(forecast.secondsUnderLoad),
    unit: 's',
    says: stages.some(({ kind }) => kind === 'hold' || kind === 'lower')
      ? said.unmeasured
      : said.between,
  }),
  why: whyChain,
  cautions: (_, { cautions }) => cautions,
  sources: (_, { forecast }) => [...forecast.sources, ...forecast.dose.sources],
  next: nextLinks,
  snippet,
  view: (input, result) => ChainView({ result, tempo: formatTempo(input.tempo) }),
  details: (_, result) => ChainDetails({ result }),
});

/** What is forecast in seconds is not known to tenths. */
function wholeSeconds({ low, likely, high, level }: Band): Band {
  return { low: Math.round(low), likely: Math.round(likely), high: Math.round(high), level };
}

function nextLinks(
  input: ChainInput,
  { exercise, forecast, stages }: ChainResult,
): readonly NextLink[] {
  const lift = forecast.stages[0]?.count ?? forecast.secondsUnderLoad;
  const count = (reps: number, most: number) => Math.min(most, Math.max(1, reps));
  const tempo = formatTempo(input.tempo);
  const window = windowText({ low: count(lift.low, 50), high: count(lift.high, 50) });
  const work = loadText({ value: toKg(loadFromValue(input.load)), unit: 'kg' });
  const possible = String(count(lift.likely, 40));
  const past = stages.filter(({ kind }) => kind !== 'lift').length;
  return [
    { calculator: 'load-for-window', label: said.otherLoad, carry: { tempo, window } },
    {
      calculator: 'next-date',
      label: said.whenAgain,
      carry: { work: workText(exercise.id, 1, { left: 0, stages: past }), next: '', plannedOn: '' },
    },
    ...(exercise.loads.includes('barbell')
      ? [{ calculator: 'warm-up-ramp', label: said.warmUp, carry: { work, possible } }]
      : []),
    {
      calculator: 'tempo-seconds',
      label: said.howLong,
      carry: { tempo, reps: String(count(lift.likely, 100)), starts: exercise.startsWith },
    },
  ];
}
