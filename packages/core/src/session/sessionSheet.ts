import { language } from '../basis/index.ts';
import type { Caution } from '../safety/index.ts';
import type { NextSession, SessionPlan } from './SessionPlan.ts';
import type {
  AskFirstSheet,
  SessionSheet,
  SheetCaution,
  SheetLimit,
  SheetNext,
  TooShortSheet,
} from './Sheet.ts';
import { sheetLift } from './sheetLift.ts';
import type { TimeLimit } from './TimeLimit.ts';

/**
 * A plan in words and numbers: what a client can follow and what another program can read. Loads
 * are values with their unit, in the unit of the plan where that is exact.
 *
 * @param plan from `planSession`.
 * @param locale BCP 47 tag for the numbers in words.
 */
export function sessionSheet(
  plan: SessionPlan,
  locale = language,
): SessionSheet | AskFirstSheet | TooShortSheet {
  const { clientName: client, date } = plan;
  const cautions = plan.cautions.map(cautionOf);
  if (plan.kind === 'ask-first') {
    const { reasons, ask } = plan;
    return { kind: 'ask-first', client, date, reasons, ask, cautions };
  }
  if (plan.kind === 'too-short') {
    return { kind: 'too-short', client, date, message: plan.message, cautions };
  }
  const { unit, gymName: gym, minutes, limit, next } = plan;
  return {
    kind: 'sheet',
    client,
    gym,
    date,
    minutes,
    ...(limit && { limit: limitOf(limit) }),
    lifts: plan.lifts.map((lift) => sheetLift(lift, unit, locale)),
    ...(next && { next: nextOf(next) }),
    refused: plan.refused.map(({ message }) => message),
    cautions,
    stop: plan.stopRules.map(({ sign, action }) => `${sign}: ${action}`),
  };
}

function limitOf({ minutesAtMost, without, dropped, turns }: TimeLimit): SheetLimit {
  return {
    minutesAtMost,
    withoutMinutes: without.total,
    dropped: dropped.map(({ message, minutesSaved }) => ({ message, minutesSaved })),
    ...(turns && { turns: turns.message }),
  };
}

function nextOf({ date, overruled, earliest, likely, cautious, notes }: NextSession): SheetNext {
  return { date, isFixed: overruled !== undefined, earliest, likely, cautious, notes };
}

function cautionOf({ level, what, why, instead, ask }: Caution): SheetCaution {
  return { level, what, why, instead, ask };
}
