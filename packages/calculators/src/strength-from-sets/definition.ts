import { evidenceModel, strengthDrift, tempoLaw } from '@windlass/core/strength';
import { formatTempo } from '@windlass/core/tempo';
import type { Certainty, Headline, NextLink } from '../contract/Answer.ts';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { loadText } from '../fields/fieldText.ts';
import { PROJECT_CHOICE } from '../shared/sources.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { computeStrength, type StrengthResult } from './compute.ts';
import { StrengthDetails } from './details.tsx';
import { fields, groups, type StrengthInput } from './fields.ts';
import { maxFace } from './maxFace.ts';
import { kgWords } from './names.ts';
import { snippet } from './snippet.ts';
import { StrengthView } from './view.tsx';
import { whyOf } from './whyOf.ts';
import { said } from './words.ts';

export const strengthFromSets = defineCalculator({
  id: 'strength-from-sets',
  title: 'Strength from sets',
  question: 'What do my sets say about my one-rep max?',
  fields,
  groups,
  compute: computeStrength,
  headline: headlineOf,
  certainty: certaintyOf,
  why: whyOf,
  cautions: () => [
    { id: 'no-test', level: 'note', ...said.notATest, ask: ['coach'], sources: [PROJECT_CHOICE] },
  ],
  sources: (_, { curve }) => [
    ...curve.sources,
    ...tempoLaw.sources,
    evidenceModel.repeat.source,
    evidenceModel.reserve.source,
    evidenceModel.day.source,
    evidenceModel.slip.source,
    ...strengthDrift.sources,
  ],
  next: nextOf,
  snippet,
  view: (input, result) => StrengthView({ input, result }),
  details: (input, result) => StrengthDetails({ input, result }),
});

function headlineOf(input: StrengthInput, result: StrengthResult): Headline {
  const { as, end, value, band } = maxFace(input, result);
  return {
    label: said.label[as][end],
    value: formatNumber(value, band.high - band.low > WIDE ? 0 : 1),
    unit: input.show,
    ...(as === 'all' || end !== 'likely'
      ? {}
      : { also: said.withBody(kgWords(result.max.likely, input)) }),
    exact: value,
  };
}

/** In a band wider than this, a decimal would promise what is not known. */
const WIDE = 3;

function certaintyOf(input: StrengthInput, result: StrengthResult): Certainty {
  const { told } = result;
  const { end, band } = maxFace(input, result);
  if (end !== 'likely') return { kind: 'exact', says: said.binding[end] };
  const off = told.filter(({ disagrees }) => disagrees).length;
  const says = off > 0 ? said.disagree(off) : said.binding[end];
  return { kind: 'band', band, unit: input.show, says };
}

function nextOf(input: StrengthInput): readonly NextLink[] {
  const { sets, lifted, show } = input;
  const newest = [...sets].sort((a, b) => a.daysAgo - b.daysAgo)[0];
  if (lifted !== 'weight') {
    if (!newest) return [];
    const carry = { gear: 'body', bodyWeight: loadText(newest.bodyWeight), added: lifted, show };
    return [{ calculator: 'gym-loads', label: said.belt, carry }];
  }
  const rows = sets.map(({ load, reps, tempo, ended, daysAgo }) =>
    [loadText(load), reps, tempo ? formatTempo(tempo) : '', ended, daysAgo].join('_'),
  );
  const window = {
    calculator: 'load-for-window',
    label: said.window,
    carry: { sets: rows.join('~') },
  };
  const failed = [...sets]
    .sort((a, b) => a.daysAgo - b.daysAgo)
    .find(({ ended, reps }) => ended === 'failure' && reps >= 1 && reps <= 50);
  const log = { calculator: 'log-review', label: said.log, carry: { show } };
  if (!failed) return [window, log];
  const carry = { load: loadText(failed.load), reps: String(failed.reps) };
  return [window, { calculator: 'compare-equations', label: said.equations, carry }, log];
}
