import { formatTempo } from '@windlass/core/tempo';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { computeTempo } from './compute.ts';
import { fields, groups } from './fields.ts';
import { snippet } from './snippet.ts';
import { TempoDetails, TempoView } from './view.tsx';

const CONVENTION = {
  id: 'tempo-notation',
  citation:
    'Trade notation: seconds of lowering, pause, lift, pause; X is a lift as fast as possible. The reverse order is in use too, so the order is always asked for.',
  standing: 'convention',
} as const;

export const tempoSeconds = defineCalculator({
  id: 'tempo-seconds',
  title: 'Seconds at a tempo',
  question: 'How long does a repetition, and a set of them, take at this tempo?',
  fields,
  groups,
  compute: computeTempo,
  headline: ({ reps }, { setSeconds, repSeconds }) => ({
    label: `${reps} ${reps === 1 ? 'rep takes' : 'reps take'}`,
    value: formatNumber(setSeconds, 1),
    unit: 's',
    also: `${formatNumber(repSeconds)} s a rep`,
    exact: setSeconds,
  }),
  certainty: ({ lastPause }, { setSeconds, otherReading }) => ({
    kind: 'exact',
    says:
      setSeconds === otherReading
        ? 'Counted, not predicted. The rep ends without a pause, so nothing is left to choose.'
        : `Counted, not predicted, with the last pause ${lastPause === 'counted' ? 'in' : 'left out'}. ${
            lastPause === 'counted' ? 'Without it' : 'With it'
          }: ${formatNumber(otherReading, 1)} s.`,
  }),
  why: ({ tempo, reps, lastPause }, { phases, repSeconds, setSeconds }) => ({
    formula:
      'set = reps × (lower + pause + lift + pause), less the last pause where it is left out',
    steps: [
      `rep = ${phases.map(({ seconds }) => formatNumber(seconds)).join(' + ')} = ${formatNumber(repSeconds)} s`,
      lastPause === 'counted'
        ? `set = ${reps} × ${formatNumber(repSeconds)} = ${formatNumber(setSeconds)} s`
        : `set = ${reps} × ${formatNumber(repSeconds)} − ${formatNumber(reps * repSeconds - setSeconds)} = ${formatNumber(setSeconds)} s`,
    ],
    restsOn:
      tempo.liftSeconds === 'X'
        ? 'A fast lift has no fixed time. The seconds it counts for are a convention for adding up; nobody should slow down to fill them.'
        : 'Arithmetic on what was asked for. What is done under a load drifts: people speed up as they tire.',
  }),
  cautions: () => [],
  sources: () => [CONVENTION],
  next: ({ tempo, reps }) => [
    {
      calculator: 'load-for-window',
      label: 'Which load fails at this tempo?',
      carry: {
        tempo: formatTempo(tempo),
        window: `${Math.max(1, Math.min(reps, 28))}-${Math.min(reps + 2, 30)}`,
      },
    },
  ],
  snippet,
  view: (input, result) => TempoView({ input, result }),
  details: (input, result) => TempoDetails({ input, result }),
});
