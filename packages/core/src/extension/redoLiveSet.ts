import type { LiveSetStep } from './advanceLiveSet.ts';
import type { LiveSet } from './LiveSet.ts';

/**
 * Brings back the event that was taken back last. A new event in between forgets it.
 *
 * @returns the set unchanged and a problem when nothing was taken back.
 * @example
 * ```ts
 * import { redoLiveSet, startLiveSet } from '@windlass/core/extension';
 * const ready = startLiveSet({
 *   exerciseId: 'chin-up',
 *   load: { value: 82, unit: 'kg' },
 *   stages: [{ kind: 'lift' }],
 *   secondsPerRep: 4,
 *   maxSeconds: 180,
 * });
 * redoLiveSet(ready).problem?.code; // 'extension.live-nothing-to-redo'
 * ```
 */
export function redoLiveSet(set: LiveSet): LiveSetStep {
  const [next, ...undone] = set.undone;
  if (next) return { set: { plan: set.plan, log: [...set.log, next], undone }, problem: null };
  return {
    set,
    problem: {
      code: 'extension.live-nothing-to-redo',
      path: [],
      message: 'Nothing was taken back in this set, so nothing can be brought back.',
    },
  };
}
