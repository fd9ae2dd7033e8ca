import type { CautionRule } from './CautionRule.ts';
import type { ClinicianLimits } from './ClientHealth.ts';
import { clinicianReason, reasonOf } from './LimitReasons.ts';
import type { Permission } from './Limits.ts';

export type PermissionItem =
  | 'training'
  | 'maximalSingles'
  | 'estimatedMaxima'
  | 'failureChains'
  | 'longHolds'
  | 'forcedReps'
  | 'heartRateTargets'
  | 'unsupervised';

/** Whether something is allowed, by the strictest rule that still counts beside the clinician's word. */
export function permissionOf(
  item: PermissionItem,
  rules: readonly CautionRule[],
  clinician: ClinicianLimits | undefined,
): Permission {
  const word = clinicianWord(item, clinician);
  const counting = rules.filter(
    (rule) => rule.limits?.[item] !== undefined && !(word && rule.clinicianMayReplace),
  );
  const hard = counting.filter((rule) => rule.limits?.[item] === 'refused');
  const hardReasons = hard.map((rule) => reasonOf(rule.caution));
  if (word === 'refused') return { kind: 'refused', reasons: [clinicianReason(), ...hardReasons] };
  if (hard.length) return { kind: 'refused', reasons: hardReasons };
  if (!counting.length) return { kind: 'allowed' };
  return { kind: 'off-by-default', reasons: counting.map((rule) => reasonOf(rule.caution)) };
}

function clinicianWord(
  item: PermissionItem,
  clinician: ClinicianLimits | undefined,
): 'allowed' | 'refused' | undefined {
  if (item === 'failureChains' || item === 'longHolds' || item === 'maximalSingles') {
    return clinician?.[item];
  }
  return undefined;
}
