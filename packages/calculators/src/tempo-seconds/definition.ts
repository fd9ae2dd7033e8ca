import { formatTempo } from '@windlass/core/tempo';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { computeTempo, type TempoInput } from './compute.ts';
import { fields, groups } from './fields.ts';
import { snippet } from './snippet.ts';
import { TempoDetails, TempoView } from './view.tsx';
import { said } from './words.ts';

const CONVENTION = {
  id: 'tempo-notation',
  citation: said.notation,
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
    label: said.takes(reps),
    value: formatNumber(setSeconds, 1),
    unit: 's',
    also: said.perRep(repSeconds),
    exact: setSeconds,
  }),
  certainty: ({ lastPause }, { setSeconds, otherReading }) => ({
    kind: 'exact',
    says: pauseWords(lastPause, setSeconds, otherReading),
  }),
  why: ({ tempo, reps, lastPause }, { phases, repSeconds, setSeconds }) => ({
    formula: said.formula,
    steps: [
      said.rep(
        phases.map(({ seconds }) => seconds),
        repSeconds,
      ),
      (lastPause === 'counted' ? said.set : said.setLess)(reps, repSeconds, setSeconds),
    ],
    restsOn: tempo.liftSeconds === 'X' ? said.fast : said.restsOn,
  }),
  cautions: () => [],
  sources: () => [CONVENTION],
  next: ({ tempo, reps }) => [
    {
      calculator: 'load-for-window',
      label: said.whichLoad,
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

function pauseWords(lastPause: TempoInput['lastPause'], seconds: number, other: number): string {
  if (seconds === other) return said.noPause;
  return lastPause === 'counted' ? said.withPause(other) : said.withoutPause(other);
}
