import { type Exercise, hasStations } from '../anatomy/index.ts';
import type { ExchangeReason, ExchangeSetting } from './Exchange.ts';
import { fromLimits } from './fromLimits.ts';
import type { ClinicianFilter } from './readClinicianList.ts';

/**
 * What rules an exercise out for this person and place. Every entry is a hard filter: an exercise
 * with one objection is never offered, however short the list gets.
 */
export function objections(
  exercise: Exercise,
  setting: ExchangeSetting,
  filter: ClinicianFilter,
): readonly ExchangeReason[] {
  const listed = filter.reasonAgainst(exercise);
  return [
    ...(listed ? [listed] : []),
    ...fromLimits(exercise, setting.limits),
    ...fromPlace(exercise, setting),
    ...fromBeingAlone(exercise, setting),
  ];
}

function fromPlace(exercise: Exercise, { atHand }: ExchangeSetting): readonly ExchangeReason[] {
  const loads = exercise.loads.some((load) => {
    if (load === 'body') return true;
    if (!atHand.loads.includes(load)) return false;
    if (load !== 'fixed') return true;
    const forms = atHand.fixedForms ?? ['dumbbell'];
    return (exercise.fixedForms ?? ['dumbbell']).some((form) => forms.includes(form));
  });
  const missing = exercise.stations.filter((station) => !hasStations(atHand.stations, [station]));
  return [
    ...(loads
      ? []
      : [
          {
            code: 'no-load-here',
            words: `Nothing here loads it: it takes ${exercise.loads.join(' or ')}.`,
          },
        ]),
    ...missing.map((station) => ({
      code: 'no-station-here',
      words: `There is no ${station.replaceAll('-', ' ')} here.`,
    })),
  ];
}

function fromBeingAlone(
  exercise: Exercise,
  { alone, stops, toFailure = true }: ExchangeSetting,
): readonly ExchangeReason[] {
  if (!alone || !toFailure || exercise.atFailureAlone === 'leave') return [];
  if (exercise.atFailureAlone === 'needs-stops' && stops) return [];
  const words =
    exercise.atFailureAlone === 'needs-stops'
      ? 'Alone and to failure it needs stops set just below the lowest point and tried with the empty bar.'
      : 'To failure it needs a partner who can take the load.';
  return [{ code: 'not-alone-to-failure', words }];
}
