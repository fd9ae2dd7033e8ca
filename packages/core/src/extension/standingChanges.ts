import type { LiveSetPlan } from './LiveSet.ts';
import type { Stage } from './Stage.ts';
import type { LiveEnd, LivePhase, LiveStanding, StageDone } from './Standing.ts';

export function begun(
  plan: LiveSetPlan,
  standing: LiveStanding,
  stage: number,
  phase: LivePhase,
  at: number,
): LiveStanding {
  const known = stage === standing.stage;
  const planned = plan.stages[stage] as Stage;
  const askedSeconds = askedFor(planned, plan.secondsPerRep);
  const fresh: StageDone = { stage: planned, seconds: [], askedSeconds, failed: false };
  return {
    ...standing,
    phase,
    stage,
    since: at,
    stages: known ? standing.stages : [...standing.stages, fresh],
  };
}

function askedFor(stage: Stage, secondsPerRep: number): number | null {
  if (stage.kind === 'hold') return null;
  if (stage.kind === 'lower') return stage.secondsEach;
  return stage.kind === 'part-range' ? secondsPerRep / 2 : secondsPerRep;
}

export function withStage(standing: LiveStanding, change: Partial<StageDone>): LiveStanding {
  const last = standing.stages.at(-1) as StageDone;
  return { ...standing, stages: standing.stages.with(-1, { ...last, ...change }) };
}

/** Adds the seconds since the last boundary to the stage. */
export function timed(standing: LiveStanding, at: number): LiveStanding {
  const seconds = at - standing.since;
  const before = standing.stages.at(-1) as StageDone;
  const next = withStage(standing, { seconds: [...before.seconds, seconds] });
  return { ...next, since: at, secondsUnderLoad: standing.secondsUnderLoad + seconds };
}

/** A hold or a lowering that is broken off counts by the time it lasted; a repetition does not. */
export function cutOff(standing: LiveStanding, at: number): LiveStanding {
  return standing.phase === 'holding' || standing.phase === 'lowering'
    ? timed(standing, at)
    : standing;
}

export function closed(plan: LiveSetPlan, standing: LiveStanding): LiveStanding {
  const more = standing.stage < plan.stages.length - 1;
  return more ? { ...standing, phase: 'between' } : ended(standing, { by: 'chain-done' });
}

export function ended(standing: LiveStanding, end: LiveEnd): LiveStanding {
  return { ...standing, phase: 'ended', end };
}
