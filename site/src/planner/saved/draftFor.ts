import type { SavedClient, SavedGym } from '@windlass/core/schema';
import { type Json, listAt, setAt, textAt } from '../state/tree.ts';
import { liftsIn } from './liftsIn.ts';
import { withSavedId } from './SavedIds.ts';
import { withLog } from './withLog.ts';

/**
 * The draft for a kept person: with what the log tells of them, and not before the last day of it.
 *
 * @param today the day of the plan, `YYYY-MM-DD`, unless the log goes beyond it.
 */
export function draftForClient(
  draft: Json,
  { id, client }: SavedClient,
  log: readonly Json[],
  today: string,
): Json {
  const own = withLog(client, log);
  const days = listAt(own, ['sets']).map((set) => textAt(set, ['date']));
  const last = [today, ...days].sort().at(-1) ?? today;
  const dated = setAt(setAt(draft, ['client'], own), ['intent', 'date'], last);
  return withSavedId(dated, 'client', id);
}

/** The draft in a kept gym, with lifts that it can load. */
export function draftForGym(draft: Json, { id, gym }: SavedGym): Json {
  return withSavedId(liftsIn(setAt(draft, ['gym'], gym)), 'gym', id);
}
