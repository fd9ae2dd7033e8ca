import { loadValue, toKg } from '@windlass/core/load';
import { findingRules, tempoLaw } from '@windlass/core/strength';
import { formatTempo } from '@windlass/core/tempo';
import type { Certainty, Headline, NextLink } from '../contract/Answer.ts';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { loadText, windowText } from '../fields/fieldText.ts';
import { barTexts } from '../shared/barTexts.ts';
import { HEALTH_NOT_ASKED } from '../shared/cautions.ts';
import { gearTexts } from '../shared/gearTexts.ts';
import { curveOf } from '../shared/liftField.ts';
import { loadFace, loadWords } from '../shared/loadWords.ts';
import { PROJECT_CHOICE } from '../shared/sources.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { computeFirstLoad, type FirstLoadResult, loadOf } from './compute.ts';
import { FirstLoadDetails } from './details.tsx';
import { type FirstLoadInput, fields, groups } from './fields.ts';
import { snippet } from './snippet.ts';
import { FirstLoadView } from './view.tsx';
import { whyOf } from './whyOf.ts';
import { said } from './words.ts';

export const firstLoad = defineCalculator({
  id: 'first-load',
  title: 'First load',
  question: 'No numbers yet: how do I find a first load?',
  fields,
  groups,
  compute: computeFirstLoad,
  headline: headlineOf,
  certainty: certaintyOf,
  why: whyOf,
  cautions: (_, { step }) => [
    ...(step.kind === 'try'
      ? [
          {
            id: 'trial-short-of-failure',
            level: 'note' as const,
            ...said.lightest,
            ask: ['coach' as const],
            sources: [PROJECT_CHOICE],
          },
        ]
      : []),
    HEALTH_NOT_ASKED,
  ],
  sources: (input) => [
    ...findingRules.sources,
    ...curveOf(input.lift).sources,
    ...tempoLaw.sources,
  ],
  next: nextOf,
  snippet,
  view: (input, result) => FirstLoadView({ input, result }),
  details: (input, result) => FirstLoadDetails({ input, result }),
  newRow: (name, input) => {
    if (name !== 'tries') return null;
    const computed = computeFirstLoad(input);
    if (computed.kind === 'none' || computed.result.step.kind !== 'try') return null;
    const { choice, reps } = computed.result.step;
    return { load: loadValue(choice.shown, input.show), reps, felt: '3' };
  },
});

function headlineOf(input: FirstLoadInput, { step, counts, question }: FirstLoadResult): Headline {
  const what = said.what[input.gear];
  const load = loadOf(step);
  const label =
    step.kind === 'try'
      ? said.trial(question.tries.length + 1, what)
      : said[step.kind === 'found' ? 'work' : 'start'](what);
  const also = counts === 'stack' ? said.atTheHandle(loadWords(load.load, input.show)) : null;
  return {
    label,
    ...loadFace(load.shown, input.show),
    ...(step.kind === 'try' ? { also: said.upTo(step.reps) } : also ? { also } : {}),
  };
}

function certaintyOf({ window }: FirstLoadInput, { step }: FirstLoadResult): Certainty {
  if (step.kind === 'try') {
    const how = said.stopEarly(step.reps, step.stopWithLeft);
    return { kind: 'exact', says: `${said.because[step.because]} ${how}` };
  }
  const { load } = step;
  const [words, chance] =
    step.kind === 'found' ? [said.found, load.inside] : [said.learn, load.before];
  return {
    kind: 'band',
    band: load.reps,
    unit: 'reps',
    says: words(window.low, window.high, formatNumber(chance * 100, 0)),
  };
}

function nextOf(input: FirstLoadInput, { step }: FirstLoadResult): readonly NextLink[] {
  const { gear, tempo, window, show } = input;
  const load = loadOf(step);
  const text = loadText({ value: toKg(load.shown), unit: 'kg' });
  const bar =
    gear === 'bar'
      ? [
          {
            calculator: 'bar-loading',
            label: said.loadTheBar(loadWords(load.shown, show)),
            carry: { target: text, ...barTexts(input) },
          },
        ]
      : [];
  if (step.kind === 'try') return bar;
  const gearText = gearTexts(input);
  return [
    {
      calculator: 'load-for-window',
      label: said.loadForWindow,
      carry: {
        window: windowText(window),
        tempo: formatTempo(tempo),
        sets: setsText(input),
        ...gearText,
      },
    },
    { calculator: 'warm-up-ramp', label: said.warmUp, carry: { work: text, ...gearText } },
    ...bar,
  ];
}

/** The trial sets as rows of the calculator for a rep window. */
function setsText({ tries, tempo }: FirstLoadInput): string {
  return tries
    .map(({ load, reps, felt }) =>
      [loadText(load), reps, formatTempo(tempo), ENDED[felt], 0].join('_'),
    )
    .join('~');
}

const ENDED = {
  'far-too-easy': 'more',
  '10': 'more',
  '5': '4',
  '3': '3',
  '2': '2',
  '1': '1',
  failed: 'failure',
  'form-broke': 'failure',
} as const;
