import type { ClinicianLimits, TrainingContext } from './ClientHealth.ts';

/** Whether the day that a clinician gave as the last one is over; without either date it is not. */
export function limitEnded(
  clinician: ClinicianLimits | undefined,
  { date = '' }: TrainingContext,
): boolean {
  return date > (clinician?.until ?? '9999-12-31');
}
