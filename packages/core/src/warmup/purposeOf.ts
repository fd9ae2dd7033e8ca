import type { RampPurpose } from './Ramp.ts';
import { rampRules } from './rampRules.ts';

/** What a step is for, by its share of the work load. */
export function purposeOf(shareOfWork: number): RampPurpose {
  if (shareOfWork >= rampRules.primerFrom) return 'primer';
  return shareOfWork > rampRules.circulationUpTo ? 'rehearsal' : 'circulation';
}
