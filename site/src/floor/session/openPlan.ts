import { rememberLifts } from '@windlass/core/session';
import { type Planned, planFrom } from '../../planner/state/planFrom.ts';
import { readDraft } from '../../planner/state/readDraft.ts';
import type { Json } from '../../planner/state/tree.ts';
import type { FloorSession } from './FloorSession.ts';
import { layOutSession } from './layOutSession.ts';

/** A draft laid out to be run, or the first thing that is wrong with it. */
export type OpenedPlan =
  | { readonly kind: 'session'; readonly session: FloorSession; readonly planned: Planned }
  | { readonly kind: 'wrong'; readonly message: string };

/** Plans from a draft, and lays the plan out as the sets to do. */
export function openPlan(draft: Json): OpenedPlan {
  const read = readDraft(draft);
  if (!read.ok) return { kind: 'wrong', message: read.problems[0]?.message ?? '' };
  const planned = planFrom(draft, read.value, rememberLifts());
  return { kind: 'session', session: layOutSession(planned), planned };
}
