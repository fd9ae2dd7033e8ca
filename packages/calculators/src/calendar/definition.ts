import { recoveryModel } from '@windlass/core/recovery';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { HEALTH_NOT_ASKED } from '../shared/cautions.ts';
import { PROJECT_CHOICE } from '../shared/sources.ts';
import { computeCalendar } from './compute.ts';
import { CalendarDetails } from './details.tsx';
import { fields, groups } from './fields.ts';
import { snippet } from './snippet.ts';
import { WeekTable } from './WeekTable.tsx';
import { whyPlan } from './why.ts';
import { said } from './words.ts';

export const calendar = defineCalculator({
  id: 'calendar',
  title: 'Training calendar',
  question: 'Which days do the sessions go on?',
  fields,
  groups,
  compute: computeCalendar,
  headline: (_, { plan: { sessions }, asked }) => ({
    label: said.headline,
    value: String(sessions.length),
    unit: said.sessions(sessions.length),
    ...(asked !== null && { also: said.asked(asked) }),
    exact: sessions.length,
  }),
  certainty: (_, { plan }) => ({
    kind: 'exact',
    says: plan.shortfalls.length === 0 ? said.allFit : said.notAll,
  }),
  why: (_, result) => whyPlan(result),
  cautions: () => [
    {
      id: 'plan-cannot-see',
      level: 'note',
      ...said.notReviewed,
      ask: ['coach'],
      sources: [PROJECT_CHOICE],
    },
    HEALTH_NOT_ASKED,
  ],
  sources: () => {
    const { fitted, indirect, pastFailure, spread } = recoveryModel;
    return [fitted, indirect, pastFailure, spread].map(({ source }) => source);
  },
  next: () => [],
  snippet,
  view: (_, { request, plan }) => WeekTable({ request, sessions: plan.sessions }),
  details: (input, result) => CalendarDetails({ input, result }),
});
