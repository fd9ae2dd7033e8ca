import type { ClientHealth } from './ClientHealth.ts';
import { reasonOf } from './LimitReasons.ts';
import type { Limits } from './Limits.ts';
import type { ComplaintRule } from './rules/complaintRules.ts';
import type { FlaggedJoint } from './rulesFor.ts';

/** Joints that wait for a clinician: those with a grave sign, and those treated under one only. */
export function pausedJoints(
  client: ClientHealth,
  complaints: readonly ComplaintRule[],
  flags: readonly FlaggedJoint[],
): Limits['joints'] {
  if (client.clinician?.agreesToTraining === true) return [];
  return [
    ...flags
      .filter(({ rule }) => rule.pauses === 'joint')
      .map(({ rule, complaint }) => ({ joint: complaint.joint, reason: reasonOf(rule.caution) })),
    ...complaints
      .filter((rule) => rule.needsClinician)
      .map((rule) => ({ joint: rule.joint, reason: reasonOf(rule.caution) })),
  ];
}
