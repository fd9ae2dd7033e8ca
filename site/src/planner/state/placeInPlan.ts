import { type Json, listAt } from './tree.ts';

const LIFTS = ['intent', 'lifts'];

/**
 * Where a lift of the draft stands in the draft that the shown plan was made from, so that results
 * stay with their lift while another field cannot be read; -1 where it is not in that plan.
 */
export function placeInPlan(draft: Json, planned: Json, place: number): number {
  const now = listAt(draft, LIFTS);
  const then = listAt(planned, LIFTS);
  const lift = now[place];
  const same = lift === undefined ? -1 : then.indexOf(lift);
  if (same >= 0) return same;
  const there = then[place];
  return there !== undefined && !now.includes(there) ? place : -1;
}
