import type { NearestChain } from './ChainRefusal.ts';
import { chainParameters } from './chainParameters.ts';
import { chainRefusals } from './chainRefusals.ts';
import type { ChainSetting, HoldStage, LiftStage, LowerStage, Stage, StageKind } from './Stage.ts';
import { stageAmounts } from './stageAmounts.ts';

/** From the weakest kind of work to the strongest. */
const weakestFirst: readonly StageKind[] = [
  'lift',
  'lighter',
  'pause',
  'assisted',
  'part-range',
  'hold',
  'lower',
];

/**
 * The allowed chain that keeps most of what was asked.
 *
 * Amounts are brought into range, a hold is moved to the hardest position that the exercise has,
 * lifting is put first where it is missing; then every choice of the stages is tried, in the
 * order asked and in order of strength, and the one with the most stages is taken.
 *
 * @param asked at most `stageAmounts.stages` stages are considered.
 * @returns when not even lifting to failure is allowed: stop short of it, or no plan.
 */
export function nearestChain(asked: readonly Stage[], setting: ChainSetting): NearestChain {
  const { limits } = setting;
  if (
    limits.training.kind !== 'allowed' &&
    !(limits.training.kind === 'off-by-default' && setting.switchedOn)
  ) {
    return { kind: 'none', why: limits.training.reasons.map((reason) => reason.words).join(' ') };
  }
  const repaired = asked
    .filter((stage): stage is LaterStage => stage.kind !== 'lift')
    .slice(0, stageAmounts.stages - 1)
    .map((stage) => repair(stage, setting));
  const ordered = repaired.toSorted(
    (a, b) => weakestFirst.indexOf(a.kind) - weakestFirst.indexOf(b.kind),
  );
  let best: readonly Stage[] | null = null;
  for (const stages of [repaired, ordered]) {
    for (let choice = 0; choice < 2 ** stages.length; choice++) {
      const chain: readonly Stage[] = [
        { kind: 'lift' },
        ...stages.filter((_, index) => (choice >> index) & 1),
      ];
      if (best && chain.length <= best.length) continue;
      if (chainRefusals(chain, setting).length === 0) best = chain;
    }
  }
  if (best) return { kind: 'chain', stages: best };
  return {
    kind: 'stop-short',
    repsInReserve: Math.max(2, limits.repsInReserve.atLeast),
    why: 'Lifting to failure is not offered here: end the set while full repetitions are still possible.',
  };
}

type LaterStage = Exclude<Stage, LiftStage>;

function repair(stage: LaterStage, setting: ChainSetting): Stage {
  switch (stage.kind) {
    case 'lighter':
      return { ...stage, loadShare: into(stage.loadShare, stageAmounts.lighterShare) };
    case 'pause':
      return { ...stage, seconds: into(stage.seconds, stageAmounts.pauseSeconds) };
    case 'assisted':
      return { ...stage, reps: into(stage.reps, stageAmounts.assistedReps) };
    case 'part-range':
      return { ...stage, maxReps: into(stage.maxReps, stageAmounts.partReps) };
    case 'hold':
      return repairHold(stage, setting);
    case 'lower':
      return repairLower(stage, setting);
  }
}

function repairHold(stage: HoldStage, { exercise }: ChainSetting): Stage {
  const maxSeconds = into(stage.maxSeconds, stageAmounts.holdSeconds);
  const asked = exercise.holds.find((position) => position.at === stage.at);
  const hardest = exercise.holds.toSorted((a, b) => b.momentArm - a.momentArm)[0];
  const enough = chainParameters.isometric.likely / exercise.eccentricFactor;
  const keep = asked && asked.momentArm >= enough;
  return { ...stage, at: keep ? stage.at : (hardest?.at ?? stage.at), maxSeconds };
}

function repairLower(stage: LowerStage, { exercise, partner, limits }: ChainSetting): Stage {
  const most = Math.min(
    stageAmounts.lowerings.max,
    limits.hardLowerings?.count ?? Number.POSITIVE_INFINITY,
    exercise.wayBack === 'partner-only' && !partner ? 1 : Number.POSITIVE_INFINITY,
  );
  return {
    ...stage,
    secondsEach: into(stage.secondsEach, stageAmounts.loweringSeconds),
    maxLowerings: Math.min(most, into(stage.maxLowerings, stageAmounts.lowerings)),
  };
}

function into(value: number, { min, max }: { readonly min: number; readonly max: number }): number {
  return Math.min(max, Math.max(min, value));
}
