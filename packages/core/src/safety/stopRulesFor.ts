import type { ClientHealth } from './ClientHealth.ts';
import { pregnancyStopRules, type StopRule, stopRules } from './stopRules.ts';

/**
 * The signs that end a set, an exercise or a session for this person, the gravest first.
 *
 * @param client what was asked; nothing need have been.
 * @returns never empty: the rules for everybody, after those for a pregnancy.
 * @example
 * ```ts
 * import { stopRulesFor } from '@windlass/core/safety';
 * stopRulesFor({})[0]?.id; // 'chest-discomfort'
 * stopRulesFor({ pregnancy: 'pregnant' })[0]?.id; // 'pregnancy-bleeding-or-fluid'
 * ```
 */
export function stopRulesFor(client: ClientHealth): readonly StopRule[] {
  return client.pregnancy === 'pregnant' ? [...pregnancyStopRules, ...stopRules] : stopRules;
}
