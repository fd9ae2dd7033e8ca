import type { RecoveryHabit } from './hoursUntilReady.ts';
import type { RecoveryEffect } from './RecoveryReports.ts';
import { mcLester2001 } from './recoverySources.ts';

/** What was learned from earlier sessions, as an effect on the hours; none when nothing was. */
export function habitEffects({ shift }: RecoveryHabit): readonly RecoveryEffect[] {
  if (shift === 0) return [];
  const percent = Math.round(100 * Math.abs(Math.exp(shift) - 1));
  return [
    {
      report: 'earlier-sessions',
      factor: Math.exp(shift),
      says: `By how earlier sessions went, this person takes ${percent} % ${shift > 0 ? 'longer' : 'less'} than most.`,
      sources: [mcLester2001],
    },
  ];
}
