import {
  type CalendarRequest,
  type NoCalendar,
  type PlannedCalendar,
  planCalendar,
} from '@windlass/core/recovery';
import type { NoAnswer } from '../contract/Answer.ts';
import type { Computed } from '../contract/Definition.ts';
import type { CalendarInput } from './fields.ts';
import { noCalendar } from './noCalendar.tsx';
import { requestOf } from './requestOf.ts';
import { said } from './words.ts';

export interface CalendarResult {
  readonly request: CalendarRequest;
  readonly plan: PlannedCalendar;
  /** Sessions that were asked for in whole weeks; `null` for as many as fit. */
  readonly asked: number | null;
}

/** The sessions in their places, or what stands in the way. */
export function computeCalendar(input: CalendarInput): Computed<CalendarResult> {
  const wrong = wrongInput(input);
  if (wrong !== undefined) {
    return { kind: 'none', headline: said.noPlan, ...wrong };
  }
  const request = requestOf(input);
  const plan: PlannedCalendar | NoCalendar = planCalendar(request);
  if (plan.kind !== 'planned') return noCalendar(request, plan);
  const asked = input.perWeek === null ? null : input.perWeek * input.weeks;
  return { kind: 'result', result: { request, plan, asked } };
}

/** What a form can say and no calendar can take. */
function wrongInput(input: CalendarInput): Pick<NoAnswer, 'reason' | 'message'> | undefined {
  const { sessions, past, fixed, away } = input;
  const unknown = [...past, ...fixed].find(({ session }) => session > sessions.length);
  if (unknown) {
    return {
      reason: 'no-such-session',
      message: said.noSuchSession(unknown.session, sessions.length),
    };
  }
  if (away.some(({ from, to }) => from > to)) {
    return { reason: 'stay-upside-down', message: said.stayUpsideDown };
  }
  return undefined;
}
