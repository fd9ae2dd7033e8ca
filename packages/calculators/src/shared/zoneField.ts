import type { ChoiceField } from '../fields/Field.ts';
import { zoneNames } from './zoneNames.ts';

/** The zone in which dates and times are meant; the last choice is remembered. */
export const zoneField = {
  kind: 'choice',
  label: 'Time zone',
  help: 'Clock changes on the way are counted as they are.',
  options: Object.entries(zoneNames).flatMap(([area, places]) =>
    places.split(' ').map((place) => ({
      id: `${area}/${place}`,
      label: `${(place.split('/').at(-1) ?? '').replaceAll('_', ' ')}, ${area}`,
    })),
  ),
  default: 'Europe/Oslo',
  remember: 'zone',
} as const satisfies ChoiceField;
