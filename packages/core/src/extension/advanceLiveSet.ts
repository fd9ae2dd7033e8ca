import type { Problem } from '../basis/index.ts';
import type { LiveSet, LiveSetEvent } from './LiveSet.ts';
import { liveSetStep } from './liveSetStep.ts';
import { liveStanding } from './liveStanding.ts';

/** The set after an event; unchanged, with the problem, when the event could not be taken. */
export interface LiveSetStep {
  readonly set: LiveSet;
  readonly problem: Problem | null;
}

/**
 * Takes one event into a set.
 *
 * Any event in any order leaves a valid set: one that cannot come now changes nothing and comes
 * back as a problem. Stop rules are never skipped: a sign ends the set at any moment, and so do a
 * lowering that was not controlled and a time that has run out, with the event that shows them.
 *
 * @example
 * ```ts
 * import { advanceLiveSet, liveStanding, startLiveSet } from '@windlass/core/extension';
 * const ready = startLiveSet({
 *   exerciseId: 'chin-up',
 *   load: { value: 82, unit: 'kg' },
 *   stages: [{ kind: 'lift' }],
 *   secondsPerRep: 4,
 *   maxSeconds: 180,
 * });
 * advanceLiveSet(ready, { kind: 'rep', atSeconds: 4 }).problem?.code; // 'extension.live-not-now'
 * const started = advanceLiveSet(ready, { kind: 'started', atSeconds: 0 }).set;
 * const stopped = advanceLiveSet(started, { kind: 'sign', atSeconds: 9, rule: 'breath-held' }).set;
 * liveStanding(stopped).end; // { by: 'stop-rule', rule: 'breath-held' }
 * ```
 */
export function advanceLiveSet(set: LiveSet, event: LiveSetEvent): LiveSetStep {
  const step = liveSetStep(set.plan, liveStanding(set), event);
  if (!step.ok) return { set, problem: step.problem };
  return { set: { plan: set.plan, log: [...set.log, event], undone: [] }, problem: null };
}
