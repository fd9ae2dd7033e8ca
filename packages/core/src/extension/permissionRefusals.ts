import type { Permission } from '../safety/index.ts';
import type { ChainRefusal } from './ChainRefusal.ts';
import { refuse } from './refuse.ts';
import type { ChainLimits, ChainSetting, Stage } from './Stage.ts';

/** Refusals that come from what is allowed to this person, in the words of their cautions. */
export function permissionRefusals(
  stages: readonly Stage[],
  { limits, switchedOn }: ChainSetting,
): readonly ChainRefusal[] {
  const check = (code: string, stage: number | null, permission: Permission, instead: string) => {
    if (permission.kind === 'allowed') return [];
    if (permission.kind === 'off-by-default' && switchedOn) return [];
    const on = permission.kind === 'off-by-default' ? ' The coach can switch it on.' : '';
    const words = permission.reasons.map((reason) => reason.words).join(' ');
    return [refuse(code, stage, words, `${instead}${on}`, [])];
  };
  const pastFailure = stages.length > 1;
  return [
    ...check('no-training-yet', null, limits.training, 'Ask first, then plan.'),
    ...(pastFailure
      ? check('no-chain', null, limits.failureChains, 'End the set before lifting fails.')
      : []),
    ...toFailure(limits, switchedOn),
    ...stages.flatMap((stage, index) => {
      if (stage.kind === 'hold') {
        return check('no-long-hold', index, limits.longHolds, 'Leave the hold out.');
      }
      if (stage.kind === 'assisted') {
        return check('no-forced-reps', index, limits.forcedReps, 'Leave the help out.');
      }
      return stage.kind === 'lower' ? lowerings(stage.maxLowerings, limits, index) : [];
    }),
  ];
}

function toFailure(
  { repsInReserve: { atLeast, firm, reasons } }: ChainLimits,
  switchedOn: boolean,
): readonly ChainRefusal[] {
  if (atLeast <= 0 || (!firm && switchedOn)) return [];
  const words = reasons.map((reason) => reason.words).join(' ');
  const instead = `Stop with ${atLeast} or more repetitions left.`;
  return [refuse('not-to-failure', null, words, instead, [])];
}

function lowerings(
  asked: number,
  { hardLowerings }: ChainLimits,
  stage: number,
): readonly ChainRefusal[] {
  if (!hardLowerings || asked <= hardLowerings.count) return [];
  const words = hardLowerings.reasons.map((reason) => reason.words).join(' ');
  const instead =
    hardLowerings.count > 0
      ? `Lower ${hardLowerings.count} times at most in this session.`
      : 'Leave the lowering out.';
  return [refuse('too-many-lowerings', stage, words, instead, [])];
}
