import { toKg } from '@windlass/core/load';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { loadText } from '../fields/fieldText.ts';
import { weightOfBar } from '../shared/barFields.ts';
import { barTexts } from '../shared/barTexts.ts';
import { loadWords } from '../shared/loadWords.ts';
import { targetStep } from '../shared/targetStep.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import { computeRamp } from './compute.ts';
import { RampDetails } from './details.tsx';
import { fields, groups } from './fields.ts';
import { snippet } from './snippet.ts';
import { RampView } from './view.tsx';
import { said } from './words.ts';

export const warmUpRamp = defineCalculator({
  id: 'warm-up-ramp',
  title: 'Warm-up ramp',
  question: 'Which sets lead up to this load, with how few plates moved?',
  fields,
  groups,
  compute: computeRamp,
  headline: (input, { plan, work, isExact }) => ({
    label: (isExact ? said.to : said.toNearest)(loadWords(work.shown, input.show)),
    value: String(plan.steps.length),
    unit: said.sets(plan.steps.length),
    also: said.inAll(plan.reps, formatNumber(plan.minutes, 0)),
    exact: plan.steps.length,
  }),
  certainty: (_, { plan: { capacityKept } }) => ({
    kind: 'band',
    band: {
      low: capacityKept.low * 100,
      likely: capacityKept.likely * 100,
      high: capacityKept.high * 100,
      level: capacityKept.level,
    },
    unit: '%',
    says: said.strengthLeft,
  }),
  why: (input, { plan, work, workShare }) => ({
    formula: said.formula,
    steps: [
      said.share(input.possible, formatPercent(workShare)),
      said.steps(
        plan.steps.map(({ shareOfWork }) => formatPercent(shareOfWork)),
        loadWords(work.shown, input.show),
      ),
      said.pieces(plan.piecesHandled),
    ],
    restsOn: said.restsOn,
  }),
  cautions: () => [],
  sources: (_, { plan }) => plan.sources,
  next: (input, { work }) => {
    if (input.gear !== 'bar') return [];
    const target = loadText({ value: toKg(work.load), unit: 'kg' });
    const label = said.loadTheBar(loadWords(work.load, input.show));
    return [{ calculator: 'bar-loading', label, carry: { target, ...barTexts(input) } }];
  },
  snippet,
  view: (input, result) => RampView({ input, result }),
  details: (input, result) => RampDetails({ input, result }),
  stepLoad: (name, input, direction) =>
    name === 'work' && input.gear === 'bar'
      ? targetStep(input.work, weightOfBar(input), input.plates, direction)
      : null,
});
