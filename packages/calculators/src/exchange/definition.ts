import { exerciseSources } from '@windlass/core/anatomy';
import { inSentence } from '@windlass/core/basis';
import type { Suggestion } from '@windlass/core/exchange';
import type { NextLink } from '../contract/Answer.ts';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { PROJECT_CHOICE } from '../shared/sources.ts';
import { computeExchange, type ExchangeResult } from './compute.ts';
import { ExchangeDetails } from './details.tsx';
import { fields, groups } from './fields.ts';
import { labelOf } from './labelOf.ts';
import { optionsOf } from './optionsOf.ts';
import { snippet } from './snippet.ts';
import { ExchangeView } from './view.tsx';
import { whyExchange } from './why.ts';
import { said } from './words.ts';

export const exchange = defineCalculator({
  id: 'exchange',
  title: 'Exchange an exercise',
  question: 'Which exercise instead, and why?',
  fields,
  groups,
  compute: computeExchange,
  headline: (input, result) => {
    const options = optionsOf(result);
    const stays = staysAsItIs(result);
    return {
      label: stays ? said.stays : result.setUps.length > 0 ? said.keeps : labelOf(input),
      value: (stays ? result.exercise?.name : options[0]?.exercise.name) ?? '',
      isName: true,
      unit: '',
      also: said.more(stays ? options.length : options.length - 1),
      exact: options.length,
    };
  },
  certainty: (_, result) => ({
    kind: 'exact',
    says: reasonsOf(result).join(' ') || said.onlyRank,
  }),
  why: whyExchange,
  cautions: (_, { cautions }) => cautions,
  sources: () => [...exerciseSources.slice(0, 4), PROJECT_CHOICE],
  next: (_, result) => nextLinks(optionsOf(result)[0]),
  snippet,
  view: (_, result) => ExchangeView({ result }),
  details: (_, result) => ExchangeDetails({ result }),
});

function staysAsItIs({ exercise, options }: ExchangeResult): boolean {
  return exercise !== null && 'against' in options && options.against.length === 0;
}

function reasonsOf(result: ExchangeResult): readonly string[] {
  const [first] = optionsOf(result);
  if (!first || staysAsItIs(result)) return [];
  const setUps = first.setUps.map(({ name }) => inSentence(name));
  return [
    ...(setUps.length > 0 ? [said.setUp(setUps)] : []),
    ...first.reasonsFor.flatMap(({ code, words }) => (code === 'set-up' ? [] : words)).slice(0, 1),
  ];
}

function nextLinks(option: Suggestion | undefined): readonly NextLink[] {
  if (!option) return [];
  const carry = { lift: option.exercise.endurance };
  return [{ calculator: 'first-load', label: said.firstLoad, carry }];
}
