import type { Json } from '../../planner/state/tree.ts';
import type { FloorEvent } from '../run/FloorEvent.ts';
import type { FloorSession } from '../session/FloorSession.ts';

/** A session that is being run, with all that happened in it. */
export interface SavedRun {
  readonly id: string;
  /** What it was planned from. */
  readonly plan: Json;
  /** In universal time, `2027-03-15T18:30:00Z`. */
  readonly startedAt: string;
  readonly session: FloorSession;
  readonly events: readonly FloorEvent[];
}
