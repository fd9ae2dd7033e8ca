import type { Problem } from '../basis/index.ts';
import { dueStopAt } from './dueStopAt.ts';
import type { LiveSetEvent, LiveSetPlan } from './LiveSet.ts';
import { liveProblem } from './liveProblem.ts';
import { loweringControl } from './loweringControl.ts';
import { nextEvents } from './nextEvents.ts';
import type { LowerStage } from './Stage.ts';
import type { LiveStanding, StageDone } from './Standing.ts';
import { stageAfter } from './stageAfter.ts';
import { begun, closed, cutOff, ended, timed, withStage } from './standingChanges.ts';

export type LiveStep =
  | { readonly ok: true; readonly standing: LiveStanding }
  | { readonly ok: false; readonly problem: Problem };

/** A set's standing after one more event, or what is wrong with the event. */
export function liveSetStep(
  plan: LiveSetPlan,
  standing: LiveStanding,
  event: LiveSetEvent,
): LiveStep {
  const problem = liveProblem(standing, event);
  if (problem) return { ok: false, problem };
  const happened = apply(plan, { ...standing, lastAt: event.atSeconds }, event);
  const due = event.kind === 'sign' ? null : dueStopAt(plan, standing, event.atSeconds);
  const after = due ? ended(happened, { by: 'stop-rule', rule: due.rule }) : happened;
  return { ok: true, standing: { ...after, next: nextEvents(plan, after.phase, after.stage) } };
}

function apply(plan: LiveSetPlan, standing: LiveStanding, event: LiveSetEvent): LiveStanding {
  const at = event.atSeconds;
  switch (event.kind) {
    case 'started':
      return begun(plan, { ...standing, startedAt: at }, 0, 'lifting', at);
    case 'rep':
      return repDone(plan, timed(standing, at));
    case 'failed':
      return closed(plan, withStage(standing, { failed: true }));
    case 'lifting-resumed':
    case 'hold-begun':
    case 'lowering-begun': {
      const phase = {
        'lifting-resumed': 'lifting',
        'hold-begun': 'holding',
        'lowering-begun': 'lowering',
      } as const;
      const stage = stageAfter(plan, standing.stage, event.kind) ?? standing.stage;
      return begun(plan, standing, stage, phase[event.kind], at);
    }
    case 'hold-ended':
      return closed(plan, timed(standing, at));
    case 'lowering-ended':
      return loweringDone(plan, timed(standing, at));
    case 'stopped':
      return ended(cutOff(standing, at), {
        by: 'choice',
        reason: event.reason,
        ...(event.repsLeft !== undefined && { repsLeft: event.repsLeft }),
      });
    case 'sign': {
      const noted = { ...standing, signs: [...standing.signs, event.rule] };
      if (standing.end) return noted;
      return ended(cutOff(noted, at), { by: 'stop-rule', rule: event.rule });
    }
  }
}

function repDone(plan: LiveSetPlan, standing: LiveStanding): LiveStanding {
  const { stage, seconds } = standing.stages.at(-1) as StageDone;
  const most =
    stage.kind === 'assisted' ? stage.reps : stage.kind === 'part-range' ? stage.maxReps : null;
  return most !== null && seconds.length >= most ? closed(plan, standing) : standing;
}

function loweringDone(plan: LiveSetPlan, standing: LiveStanding): LiveStanding {
  const { stage, seconds } = standing.stages.at(-1) as StageDone & { readonly stage: LowerStage };
  const control = loweringControl(seconds, stage.secondsEach);
  const next: LiveStanding = { ...standing, control };
  if (control.kind === 'lost') {
    return ended(next, { by: 'stop-rule', rule: 'lowering-not-controlled' });
  }
  return seconds.length >= stage.maxLowerings ? closed(plan, next) : { ...next, phase: 'between' };
}
