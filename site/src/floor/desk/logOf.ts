import { listAt, textAt } from '../../planner/state/tree.ts';
import type { SavedRun } from '../keep/SavedRun.ts';
import { dayDone, dayOf } from '../log/dayDone.ts';
import { loggedSets } from '../log/loggedSets.ts';
import { foldEvents } from '../run/foldEvents.ts';

/** What was done in a session that is kept, for the log. */
export function logOf({ plan, session, events, startedAt }: SavedRun) {
  const known = listAt(plan, ['client', 'sets']).map((set) => textAt(set, ['date']));
  const date = dayDone(session.date, known, dayOf(Date.parse(startedAt)));
  return { date, sets: loggedSets(session, foldEvents(session, events), date) };
}
