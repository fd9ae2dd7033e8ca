import type { LiveSetPlan } from './LiveSet.ts';
import type { HoldStage } from './Stage.ts';
import type { LiveStanding } from './Standing.ts';

/** Seconds past the time given for a hold before the set is ended. */
const HOLD_GRACE_SECONDS = 5;

/** A stop rule that the clock has brought. */
export interface DueStop {
  readonly rule: 'hold-too-long' | 'set-too-long';
  /** Second at which it became due. */
  readonly atSeconds: number;
}

/** The stop rule that is due at a moment of a running set, the earlier of two; null when none is. */
export function dueStopAt(
  plan: LiveSetPlan,
  standing: LiveStanding,
  atSeconds: number,
): DueStop | null {
  if (standing.startedAt === null || standing.end) return null;
  const due: DueStop[] = [
    { rule: 'set-too-long', atSeconds: standing.startedAt + plan.maxSeconds },
  ];
  if (standing.phase === 'holding') {
    const { maxSeconds } = plan.stages[standing.stage] as HoldStage;
    const end = standing.since + maxSeconds + HOLD_GRACE_SECONDS;
    due.push({ rule: 'hold-too-long', atSeconds: end });
  }
  const passed = due.filter((stop) => atSeconds > stop.atSeconds);
  return passed.sort((a, b) => a.atSeconds - b.atSeconds)[0] ?? null;
}
