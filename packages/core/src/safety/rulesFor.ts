import type { CautionRule } from './CautionRule.ts';
import type { ClientHealth, TrainingContext } from './ClientHealth.ts';
import { ageRules } from './rules/ageRules.ts';
import { bloodPressureRules } from './rules/bloodPressureRules.ts';
import { type ComplaintRule, complaintRules } from './rules/complaintRules.ts';
import { pregnancyRules } from './rules/pregnancyRules.ts';
import { type RedFlagRule, redFlagRules } from './rules/redFlagRules.ts';
import { screeningRules } from './rules/screeningRules.ts';
import { workRules } from './rules/workRules.ts';

/** A sign, and the complaint it was reported with. */
export interface FlaggedJoint {
  readonly rule: RedFlagRule;
  readonly complaint: ComplaintRule;
}

/** Every rule that applies, each in its table's order. */
export function rulesFor(
  client: ClientHealth,
  context: TrainingContext,
): {
  readonly general: readonly CautionRule[];
  readonly complaints: readonly ComplaintRule[];
  readonly flags: readonly FlaggedJoint[];
} {
  const general = [
    ...screeningRules,
    ...bloodPressureRules,
    ...pregnancyRules,
    ...ageRules,
    ...workRules,
  ].filter((rule) => rule.when(client, context));
  const complaints = complaintRules.filter((rule) =>
    client.complaints?.some((complaint) => complaint.kind === rule.complaint),
  );
  const flags = complaints.flatMap((complaint) =>
    redFlagRules
      .filter((rule) =>
        client.complaints?.some(
          ({ kind, redFlags }) => kind === complaint.complaint && redFlags?.includes(rule.flag),
        ),
      )
      .map((rule) => ({ rule, complaint })),
  );
  return { general, complaints, flags };
}
