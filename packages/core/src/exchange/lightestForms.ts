import type { Exercise } from '../anatomy/index.ts';
import { inSentence } from '../basis/index.ts';
import type { ExchangeReason } from './Exchange.ts';
import type { ClinicianFilter } from './readClinicianList.ts';
import { setUpsWithin } from './setUpsWithin.ts';

/**
 * What the clinician could be asked about: forms of a listed lift that carry the own body only and
 * would pass every filter but the list. They are named, not offered.
 */
export function lightestForms(
  candidates: readonly Exercise[],
  filter: ClinicianFilter,
  against: (exercise: Exercise) => readonly ExchangeReason[],
): readonly string[] {
  const beside = (exercise: Exercise) => against(exercise).filter(({ code }) => !onTheList(code));
  return candidates
    .filter(({ movement, loads }) => filter.named.includes(movement) && loads.includes('body'))
    .filter((exercise) => against(exercise).some(({ code }) => onTheList(code)))
    .flatMap((exercise) => {
      const [way] = setUpsWithin(exercise, beside);
      if (!way) return [];
      return [[exercise.name, ...way.setUps.map(({ name }) => inSentence(name))].join(', ')];
    });
}

function onTheList(code: string): boolean {
  return code.startsWith('on-clinicians-list');
}
