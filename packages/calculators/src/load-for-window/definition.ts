import { toKg } from '@windlass/core/load';
import { evidenceModel, generalCurve, tempoLaw } from '@windlass/core/strength';
import { formatTempo } from '@windlass/core/tempo';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { fieldText, loadText } from '../fields/fieldText.ts';
import { HEALTH_NOT_ASKED, NOBODY_THERE } from '../shared/cautions.ts';
import { loadFace, loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { computeLoadForWindow, type WindowInput } from './compute.ts';
import { WindowDetails } from './details.tsx';
import { fields, groups } from './fields.ts';
import { firstTry } from './firstTry.ts';
import { snippet } from './snippet.ts';
import { WindowView } from './view.tsx';
import { whyLoad } from './why.ts';

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
      ? { also: `${loadWords(result.answer.best.choice.load, input.show)} at the handle` }
      : {}),
  }),
  certainty: ({ window }, { answer }) => ({
    kind: 'band',
    band: answer.best.reps,
    unit: 'reps',
    says: `Failure falls within ${window.low} to ${window.high} in ${formatNumber(answer.best.inside * 100, 0)} of 100.`,
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
    const bar = {
      bar: input.bar,
      plates: fieldText(fields.plates, input.plates),
      ...(input.bar === 'other' ? { barWeight: loadText(input.barWeight) } : {}),
    };
    const time = { calculator: 'tempo-seconds', label: 'How long is that set?', carry: tempo };
    if (input.gear !== 'bar') return [time];
    return [
      { calculator: 'bar-loading', label: 'Load the bar', carry: { target: best, ...bar } },
      time,
    ];
  },
  snippet,
  view: (input, result) => WindowView({ input, result }),
  details: (input, result) => WindowDetails({ input, result }),
});

function headlineLabel({ gear, window, tempo }: WindowInput): string {
  const verb = { bar: 'Load the bar to', dumbbells: 'In each hand', stack: 'Set the stack to' }[
    gear
  ];
  const reps = window.low === window.high ? `${window.low}` : `${window.low} to ${window.high}`;
  return `${verb}, to fail in ${reps} at ${formatTempo(tempo)}`;
}
