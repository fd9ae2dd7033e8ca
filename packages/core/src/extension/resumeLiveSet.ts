import { bad, good, type Outcome } from '../basis/index.ts';
import { advanceLiveSet } from './advanceLiveSet.ts';
import type { LiveSet } from './LiveSet.ts';
import { startLiveSet } from './startLiveSet.ts';

/**
 * A saved set, taken up again: every event of its log is checked against the one before.
 *
 * @param saved a set as it was saved, its shape already checked.
 * @returns the same set, or the first event that cannot stand where it does, by its place in the
 *   log.
 * @throws RangeError as `startLiveSet` does, for a plan that is out of range.
 * @example
 * ```ts
 * import { advanceLiveSet, resumeLiveSet, startLiveSet } from '@windlass/core/extension';
 * const ready = startLiveSet({
 *   exerciseId: 'chin-up',
 *   load: { value: 82, unit: 'kg' },
 *   stages: [{ kind: 'lift' }],
 *   secondsPerRep: 4,
 *   maxSeconds: 180,
 * });
 * const started = advanceLiveSet(ready, { kind: 'started', atSeconds: 0 }).set;
 * resumeLiveSet(JSON.parse(JSON.stringify(started))).ok; // true
 * ```
 */
export function resumeLiveSet(saved: LiveSet): Outcome<LiveSet> {
  let set = startLiveSet(saved.plan);
  const events = [...saved.log, ...saved.undone];
  for (const [index, event] of events.entries()) {
    const step = advanceLiveSet(set, event);
    if (step.problem) {
      const inLog = index < saved.log.length;
      const place = inLog ? ['log', index] : ['undone', index - saved.log.length];
      return bad({ ...step.problem, path: [...place, ...step.problem.path] });
    }
    set = step.set;
  }
  return good(saved);
}
