import type { LiveSetEvent, LiveSetPlan } from './LiveSet.ts';
import type { LivePhase } from './Standing.ts';
import { stageAfter } from './stageAfter.ts';

/** What can be said in a phase of a set; a sign always can. */
export function nextEvents(
  plan: LiveSetPlan,
  phase: LivePhase,
  stage: number,
): readonly LiveSetEvent['kind'][] {
  switch (phase) {
    case 'ready':
      return ['started', 'sign'];
    case 'lifting':
      return ['rep', 'failed', 'stopped', 'sign'];
    case 'holding':
      return ['hold-ended', 'stopped', 'sign'];
    case 'lowering':
      return ['lowering-ended', 'stopped', 'sign'];
    case 'between': {
      const begins = ['lifting-resumed', 'hold-begun', 'lowering-begun'] as const;
      const possible = begins.filter((begin) => stageAfter(plan, stage, begin) !== null);
      return [...possible, 'stopped', 'sign'];
    }
    case 'ended':
      return ['sign'];
  }
}
