import { toKg } from '@windlass/core/load';
import { evidenceModel, generalCurve, tempoLaw } from '@windlass/core/strength';
import { formatTempo } from '@windlass/core/tempo';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { loadText, windowText } from '../fields/fieldText.ts';
import { barTexts } from '../shared/barTexts.ts';
import { HEALTH_NOT_ASKED, NOBODY_THERE } from '../shared/cautions.ts';
import { gearTexts } from '../shared/gearTexts.ts';
import { loadFace, loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { computeLoadForWindow, type WindowInput } from './compute.ts';
import { WindowDetails } from './details.tsx';
import { fields, groups } from './fields.ts';
import { firstTry } from './firstTry.ts';
import { snippet } from './snippet.ts';
import { WindowView } from './view.tsx';
import { whyLoad } from './why.ts';
import { said } from './words.ts';

export const loadForWindowCalculator = defineCalculator({
  id: 'load-for-window',
  title: 'Load for a rep window',
  question: 'Which load that this gym can make fails within these reps at this tempo?',
  fields,
  groups,
  compute: computeLoadForWindow,
  headline: (input, result) => ({
    label: headlineLabel(input),
    ...loadFace(result.answer.best.choice.shown, input.show),
    ...(result.counts === 'stack'
      ? { also: said.atTheHandle(loadWords(result.answer.best.choice.load, input.show)) }
      : {}),
  }),
  certainty: ({ window }, { answer }) => ({
    kind: 'band',
    band: answer.best.reps,
    unit: 'reps',
    says: said.fallsWithin(window.low, window.high, formatNumber(answer.best.inside * 100, 0)),
  }),
  why: whyLoad,
  cautions: (input, result) => [
    ...firstTry(input, result),
    ...(input.company === 'alone' ? [NOBODY_THERE] : []),
    HEALTH_NOT_ASKED,
  ],
  sources: () => [
    ...generalCurve.sources,
    ...tempoLaw.sources,
    evidenceModel.repeat.source,
    evidenceModel.reserve.source,
  ],
  next: (input, { answer }) => {
    const best = loadText({ value: toKg(answer.best.choice.shown), unit: 'kg' });
    const reps = String(Math.min(100, Math.max(1, Math.round(answer.best.reps.likely))));
    const tempo = { tempo: formatTempo(input.tempo), reps };
    const bar = barTexts(input);
    const time = { calculator: 'tempo-seconds', label: said.howLong, carry: tempo };
    const log = {
      calculator: 'log-review',
      label: said.log,
      carry: { window: windowText(input.window), show: input.show, ...gearTexts(input) },
    };
    if (input.gear !== 'bar') return [time, log];
    return [
      { calculator: 'warm-up-ramp', label: said.warmUp, carry: { work: best, ...bar } },
      { calculator: 'bar-loading', label: said.loadTheBar, carry: { target: best, ...bar } },
      time,
      log,
    ];
  },
  snippet,
  view: (input, result) => WindowView({ input, result }),
  details: (input, result) => WindowDetails({ input, result }),
});

function headlineLabel({ gear, window, tempo }: WindowInput): string {
  return said.headline(said.what[gear], window.low, window.high, formatTempo(tempo));
}
