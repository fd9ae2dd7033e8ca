import type { CautionRule } from './CautionRule.ts';
import { clinicianReason, reasonOf } from './LimitReasons.ts';
import type { LimitReason } from './Limits.ts';

/** The strictest value of the rules that still count, with the reasons of those that ask for it. */
export function strictest<Value>(
  asked: readonly (readonly [CautionRule, Value | undefined])[],
  clinicians: Value | undefined,
  compare: (a: Value, b: Value) => number,
): { readonly value: Value; readonly reasons: readonly LimitReason[] } | undefined {
  const counting: { value: Value; reason: LimitReason }[] = [];
  if (clinicians !== undefined) counting.push({ value: clinicians, reason: clinicianReason() });
  for (const [rule, value] of asked) {
    if (value === undefined || (clinicians !== undefined && rule.clinicianMayReplace)) continue;
    counting.push({ value, reason: reasonOf(rule.caution) });
  }
  const first = counting.toSorted((a, b) => compare(a.value, b.value))[0];
  if (!first) return undefined;
  const equal = counting.filter(({ value }) => compare(value, first.value) === 0);
  return { value: first.value, reasons: equal.map(({ reason }) => reason) };
}
