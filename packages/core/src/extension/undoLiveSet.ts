import type { LiveSetStep } from './advanceLiveSet.ts';
import type { LiveSet } from './LiveSet.ts';

/**
 * Takes the last event of a set back; `redoLiveSet` brings it again.
 *
 * @returns the set unchanged and a problem when nothing has happened yet.
 * @example
 * ```ts
 * import { advanceLiveSet, redoLiveSet, startLiveSet, undoLiveSet } from '@windlass/core/extension';
 * const ready = startLiveSet({
 *   exerciseId: 'chin-up',
 *   load: { value: 82, unit: 'kg' },
 *   stages: [{ kind: 'lift' }],
 *   secondsPerRep: 4,
 *   maxSeconds: 180,
 * });
 * const started = advanceLiveSet(ready, { kind: 'started', atSeconds: 0 }).set;
 * const back = undoLiveSet(started).set;
 * back.log; // []
 * redoLiveSet(back).set.log; // [{ kind: 'started', atSeconds: 0 }]
 * ```
 */
export function undoLiveSet(set: LiveSet): LiveSetStep {
  const last = set.log.at(-1);
  if (last) {
    return {
      set: { plan: set.plan, log: set.log.slice(0, -1), undone: [last, ...set.undone] },
      problem: null,
    };
  }
  return {
    set,
    problem: {
      code: 'extension.live-nothing-to-undo',
      path: [],
      message: 'Nothing has happened in this set yet, so nothing can be taken back.',
    },
  };
}
