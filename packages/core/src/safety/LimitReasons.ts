import type { Caution } from './Caution.ts';
import type { LimitReason } from './Limits.ts';

export function reasonOf(caution: Caution): LimitReason {
  return { from: caution.id, words: caution.what };
}

export function clinicianReason(): LimitReason {
  return { from: 'clinician', words: 'The clinician has set this limit.' };
}
