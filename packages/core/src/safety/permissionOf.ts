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
  const words: Partial<Record<PermissionItem, 'allowed' | 'refused'>> | undefined = clinician;
  const word = words?.[item];
  const counting = rules.flatMap(({ caution, limits, clinicianMayReplace }) => {
    const level = limits?.[item];
    const counts = level !== undefined && !(word && clinicianMayReplace);
    return counts ? [{ level, reason: reasonOf(caution) }] : [];
  });
  const hard = counting.filter(({ level }) => level === 'refused').map(({ reason }) => reason);
  if (word === 'refused') return { kind: 'refused', reasons: [clinicianReason(), ...hard] };
  if (hard.length) return { kind: 'refused', reasons: hard };
  if (!counting.length) return { kind: 'allowed' };
  return { kind: 'off-by-default', reasons: counting.map(({ reason }) => reason) };
}
