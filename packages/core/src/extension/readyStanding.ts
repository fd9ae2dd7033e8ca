import type { LiveSetPlan } from './LiveSet.ts';
import { nextEvents } from './nextEvents.ts';
import type { LiveStanding } from './Standing.ts';

/** Where every set begins. */
export function readyStanding(plan: LiveSetPlan): LiveStanding {
  return {
    phase: 'ready',
    stage: -1,
    stages: [],
    startedAt: null,
    since: 0,
    lastAt: 0,
    end: null,
    signs: [],
    secondsUnderLoad: 0,
    control: null,
    next: nextEvents(plan, 'ready', -1),
  };
}
