import { recoveryModel } from '@windlass/core/recovery';
import type { NextLink } from '../contract/Answer.ts';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { sessionKinds } from '../precomputed/sessionKinds.ts';
import { HEALTH_NOT_ASKED } from '../shared/cautions.ts';
import { PROJECT_CHOICE } from '../shared/sources.ts';
import { workText } from '../shared/workText.ts';
import { type CalendarResult, computeCalendar } from './compute.ts';
import { CalendarDetails } from './details.tsx';
import { type CalendarInput, fields, groups } from './fields.ts';
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
  next: nextOf,
  snippet,
  view: (_, { request, plan }) => WeekTable({ request, sessions: plan.sessions }),
  details: (input, result) => CalendarDetails({ input, result }),
});

/** The first session of the plan, and the one after it, for the hours of every muscle. */
function nextOf(input: CalendarInput, { plan }: CalendarResult): readonly NextLink[] {
  const [first, second] = plan.sessions;
  const row = input.sessions[Number(first.session) - 1];
  if (row === undefined) return [];
  const idsOf = (trains: CalendarInput['sessions'][number]['trains'] | undefined) =>
    (sessionKinds[trains ?? ''] ?? []).map(({ id }) => id);
  const [on = '', at = ''] = first.start.split('T');
  const end = row.end === 'past' ? { left: 0, stages: 2 } : { left: Number(row.end), stages: 0 };
  const following = second && input.sessions[Number(second.session) - 1];
  return [
    {
      calculator: 'next-date',
      label: said.ready,
      carry: {
        work: idsOf(row.trains)
          .map((id) => workText(id, row.sets, end))
          .join('~'),
        on,
        at,
        zone: input.zone,
        status: input.status,
        next: idsOf(following?.trains).join('~'),
        plannedOn: second?.start.slice(0, 10) ?? '',
        ...(second ? { plannedAt: second.start.slice(11) } : {}),
      },
    },
  ];
}
