import type { Source } from '../../basis/index.ts';

/** Stable name of a cause. */
export type StallCauseId =
  | 'short-sleep'
  | 'too-little-food'
  | 'illness-or-strain'
  | 'too-soon'
  | 'large-step'
  | 'shorter-rests'
  | 'other-tempo'
  | 'work-changed';

/** A likely cause of a stall and how to find out. */
export interface StallCause {
  readonly id: StallCauseId;
  /** `in-the-log`: the log shows it. `not-in-the-log`: it shows that it is not so. `ask`: no log can tell. */
  readonly standing: 'in-the-log' | 'not-in-the-log' | 'ask';
  /** What to ask, or what was seen. */
  readonly says: string;
  /** What to change, alone, and what to look for. */
  readonly test: string;
  readonly source?: Source;
}
