import { reasonOf } from './LimitReasons.ts';
import type { PositionLimit } from './Limits.ts';
import type { ComplaintRule } from './rules/complaintRules.ts';

/** Each loaded position that a complaint limits, once: `avoid` before `ease`, the first reason kept. */
export function positionLimits(complaints: readonly ComplaintRule[]): readonly PositionLimit[] {
  const all = (['avoid', 'ease'] as const).flatMap((level) =>
    complaints.flatMap((row) =>
      row[level].map((position) => ({ position, level, reason: reasonOf(row.caution) })),
    ),
  );
  return all.filter(
    ({ position }, at) => all.findIndex((other) => other.position === position) === at,
  );
}
