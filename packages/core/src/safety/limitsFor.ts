import type { CautionRule } from './CautionRule.ts';
import type { ClientHealth, ClinicianLimits, TrainingContext } from './ClientHealth.ts';
import { reasonOf } from './LimitReasons.ts';
import type { Limits } from './Limits.ts';
import { limitEnded } from './limitEnded.ts';
import { pausedJoints } from './pausedJoints.ts';
import { type PermissionItem, permissionOf } from './permissionOf.ts';
import { positionLimits } from './positionLimits.ts';
import { rulesFor } from './rulesFor.ts';
import { strictest } from './strictest.ts';

/**
 * What a plan for this person may contain: hard limits as data, which the other folders obey.
 *
 * Of several rules the strictest counts. A clinician's own word on an item replaces the rules
 * that exist for medical reasons, in either direction, but not those for age, signs of disease
 * or being alone.
 *
 * @param client what was asked.
 * @param context what is planned and with whom.
 * @returns every permission with its reasons; shares of the one-rep max from 0 to 1; repetitions.
 *   Without any answer everything is allowed that nobody has to agree to, and the cautions say
 *   what was not asked.
 * @example
 * ```ts
 * import { limitsFor } from '@windlass/core/safety';
 * const limits = limitsFor({ bloodPressure: { status: 'treated', doctorAgrees: true } });
 * limits.failureChains.kind; // 'refused'
 * limits.intensityCap?.share; // 0.8
 * ```
 */
export function limitsFor(client: ClientHealth, context: TrainingContext = {}): Limits {
  const { general, complaints, flags } = rulesFor(client, context);
  const { clinician } = client;
  const ended = limitEnded(clinician, context);
  const permission = (item: PermissionItem) => permissionOf(item, general, clinician);
  const stopped = flags.filter(({ rule }) => rule.pauses === 'training');
  const training = stopped.length
    ? ({ kind: 'refused', reasons: stopped.map(({ rule }) => reasonOf(rule.caution)) } as const)
    : permission('training');
  const cap = strictest(
    general.map((rule) => [rule, rule.limits?.intensityCap]),
    clinician?.intensityCap,
    lower,
  );
  const [repWindow] = general.flatMap(({ caution, limits }) =>
    limits?.repWindow ? [{ ...limits.repWindow, reasons: [reasonOf(caution)] }] : [],
  );
  const lowerings = strictest(
    general.map((rule) => [rule, rule.limits?.hardLowerings]),
    undefined,
    lower,
  );
  return {
    training,
    maximalSingles: permission('maximalSingles'),
    estimatedMaxima: permission('estimatedMaxima'),
    failureChains: permission('failureChains'),
    longHolds: permission('longHolds'),
    forcedReps: permission('forcedReps'),
    heartRateTargets: permission('heartRateTargets'),
    unsupervised: permission('unsupervised'),
    ...(cap && { intensityCap: { share: cap.value, reasons: cap.reasons } }),
    ...(repWindow && { repWindow }),
    repsInReserve: repsInReserve(general, clinician),
    ...(lowerings && { hardLowerings: { count: lowerings.value, reasons: lowerings.reasons } }),
    positions: positionLimits(complaints),
    supports: general.flatMap((rule) =>
      (rule.limits?.supports ?? []).map((support) => ({ support, reason: reasonOf(rule.caution) })),
    ),
    joints: pausedJoints(client, complaints, flags),
    handsOutOfUse: ended ? [] : (clinician?.handsOutOfUse ?? []),
    notAllowed: ended ? [] : (clinician?.notAllowed ?? []),
    ...(clinician?.painLimit !== undefined && { painLimit: clinician.painLimit }),
  };
}

function lower(a: number, b: number): number {
  return a - b;
}

function repsInReserve(
  rules: readonly CautionRule[],
  clinician: ClinicianLimits | undefined,
): Limits['repsInReserve'] {
  const chains = clinician?.failureChains === 'allowed' ? 0 : undefined;
  const atLeast = clinician?.repsInReserve ?? chains;
  const found = strictest(
    rules.map((rule) => [rule, rule.limits?.repsInReserve]),
    atLeast === undefined ? undefined : { atLeast, firm: atLeast > 0 },
    (a, b) => b.atLeast - a.atLeast || Number(b.firm) - Number(a.firm),
  );
  return found
    ? { ...found.value, reasons: found.reasons }
    : { atLeast: 0, firm: false, reasons: [] };
}
