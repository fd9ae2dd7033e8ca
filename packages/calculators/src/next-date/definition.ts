import type { Caution } from '@windlass/core/safety';
import type { Certainty, Headline } from '../contract/Answer.ts';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { HEALTH_NOT_ASKED } from '../shared/cautions.ts';
import { onceById } from '../shared/onceById.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { computeNextDate, type NextDateResult } from './compute.ts';
import { NextDateDetails } from './details.tsx';
import { fields, groups, type NextDateInput } from './fields.ts';
import { Strip } from './Strip.tsx';
import { snippet } from './snippet.ts';
import { sourcesOf } from './sourcesOf.ts';
import { whenWords } from './whenWords.ts';
import { whyDate } from './why.ts';
import { said } from './words.ts';

export const nextDate = defineCalculator({
  id: 'next-date',
  title: 'Next date',
  question: 'When may these muscles be trained hard again?',
  fields,
  groups,
  compute: computeNextDate,
  headline: headlineOf,
  certainty: certaintyOf,
  why: whyDate,
  cautions: (_, result) => [...signs(result), HEALTH_NOT_ASKED],
  sources: (_, { muscles }) => sourcesOf(muscles),
  next: ({ on, plannedOn, zone, status }) => [
    { calculator: 'calendar', label: said.calendar, carry: { firstDay: on, zone, status } },
    { calculator: 'log-review', label: said.log, carry: { on: plannedOn ?? on } },
  ],
  snippet,
  view: ({ zone }, { shared, start, plannedIn }) =>
    Strip({ muscles: shared, start, zone, plannedIn }),
  details: (input, result) => NextDateDetails({ input, result }),
});

function headlineOf({ next, zone }: NextDateInput, { start, ready }: NextDateResult): Headline {
  return {
    label: next.length > 0 ? said.headlineNext : said.headlineSame,
    value: whenWords(start, ready.likely, zone),
    isName: true,
    unit: '',
    also: said.likely(formatNumber(ready.likely, 0)),
    exact: ready.likely,
  };
}

function certaintyOf({ zone }: NextDateInput, { start, ready }: NextDateResult): Certainty {
  const { earliest, likely, cautious } = ready;
  const when = (hours: number) => whenWords(start, hours, zone);
  const band = { low: Math.round(earliest), likely, high: Math.round(cautious), level: 0.8 };
  return { kind: 'band', band, unit: said.hours, says: said.band(when(earliest), when(cautious)) };
}

/** Signs that severe soreness asks to watch for. */
function signs({ muscles }: NextDateResult): readonly Caution[] {
  const rules = muscles.flatMap(({ watchFor }) => watchFor);
  return onceById(rules).map(({ id, sign, action, ask, sources }) => ({
    id,
    level: 'caution',
    what: `${sign}.`,
    why: said.severe,
    instead: action,
    ask,
    sources,
  }));
}
