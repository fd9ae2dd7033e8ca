/** A way to place some sessions, as far as it matters for the next ones. */
export interface Label {
  /** Index of the last start used; -1 before the first. */
  readonly start: number;
  readonly session: number;
  readonly before?: Label;
  readonly day: number;
  readonly at: number;
  /** Bit i: session i is still due in this round. */
  readonly due: number;
  /** For each session, the minute from which its muscles are ready. */
  readonly ready: readonly number[];
  readonly week: number;
  readonly inWeek: number;
  readonly run: number;
  readonly inRun: number;
  /** Sessions that stayed where an earlier plan had them; more is better. */
  readonly kept: number;
  /** Squared days beyond the most even spacing; less is better. */
  readonly uneven: number;
  /** Sum of the starts; less is better. */
  readonly late: number;
}

/** Whether `a` is at least as good as `b` by what the plan is judged by after the number of sessions. */
export function isAsGood(a: Label, b: Label): boolean {
  return (b.kept - a.kept || a.uneven - b.uneven || a.late - b.late) <= 0;
}
