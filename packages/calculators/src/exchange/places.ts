import type { Station } from '@windlass/core/anatomy';
import { type AtHand, atHandFrom, fullGym } from '@windlass/core/exchange';
import { boathouse } from '../shared/boathouse.ts';

/** What can provide a load, as people name it. The own body always can. */
export const loadOptions = [
  { id: 'barbell', label: 'Bar and plates' },
  { id: 'dumbbell', label: 'Dumbbells' },
  { id: 'kettlebell', label: 'Kettlebells' },
  { id: 'short-bar', label: 'Bars in one piece' },
  { id: 'handles', label: 'Handles for plates' },
  { id: 'stack', label: 'Stacks with a pin' },
  { id: 'machine', label: 'Machines for plates' },
  { id: 'one-post', label: 'A post for plates: landmine, belt' },
  { id: 'band', label: 'Bands' },
] as const;

export type LoadId = (typeof loadOptions)[number]['id'];

/** Every station that an exercise of the library asks for, as people name it, by name. */
export const stationOptions = fullGym.stations
  .map((id) => ({ id, label: nameOf(id) }))
  .toSorted((a, b) => (a.label < b.label ? -1 : 1));

/** Where the exercise is to be done. */
export const placeOptions = [
  { id: 'boathouse', label: 'The boathouse' },
  { id: 'full', label: 'A gym with everything' },
  { id: 'home', label: 'Home: dumbbells, a chair' },
  { id: 'floor', label: 'Nothing but the floor' },
  { id: 'own', label: 'As listed below' },
] as const;

export type PlaceId = (typeof placeOptions)[number]['id'];

const boathouseStations: readonly Station[] = [
  'flat-bench',
  'rack',
  'chair',
  'wall',
  'step',
  'chin-up-bar',
  'dip-bars',
  'cable',
  'leg-press-machine',
  'leg-extension-machine',
];

const bar = { value: 20, unit: 'kg' } as const;

/** What there is to train with. */
export function atHandOf(
  place: PlaceId,
  loads: readonly LoadId[],
  stations: readonly string[],
): AtHand {
  switch (place) {
    case 'boathouse':
      return atHandFrom(
        {
          name: 'Boathouse',
          plates: boathouse.plates,
          equipment: [
            { kind: 'barbell', id: 'bar', name: 'Bar', bar },
            {
              kind: 'fixed',
              form: 'dumbbell',
              id: 'rack',
              name: 'Dumbbells',
              weights: boathouse.dumbbells,
            },
            {
              kind: 'stack',
              id: 'cable',
              name: 'Cable',
              first: boathouse.stack.first,
              rest: [{ weight: boathouse.stack.step, pieces: boathouse.stack.plates }],
              pulleyRatio: boathouse.stack.pulleyRatio,
            },
            {
              kind: 'one-post',
              form: 'belt',
              id: 'belt',
              name: 'Belt',
              base: { value: 2, unit: 'kg' },
            },
          ],
        },
        boathouseStations,
      );
    case 'full':
      return fullGym;
    case 'home':
      return { loads: ['fixed'], fixedForms: ['dumbbell'], stations: ['chair', 'wall'] };
    case 'floor':
      return { loads: [], stations: ['wall'] };
    case 'own':
      return ownPlace(loads, stations);
  }
}

function ownPlace(loads: readonly LoadId[], stations: readonly string[]): AtHand {
  const forms = { dumbbell: 'dumbbell', kettlebell: 'kettlebell', 'short-bar': 'barbell' } as const;
  const kinds = loads.map((id) => (id in forms ? 'fixed' : id)) as AtHand['loads'];
  return {
    loads: [...new Set(kinds)],
    fixedForms: loads.flatMap((id) => (id in forms ? [forms[id as keyof typeof forms]] : [])),
    stations: fullGym.stations.filter((station) => stations.includes(station)),
  };
}

function nameOf(id: string): string {
  const words = id.replaceAll('-', ' ');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
