import { exercises } from '../anatomy/index.ts';
import type { AtHand } from './AtHand.ts';

/** A gym with every kind of load and every station that an exercise of the library asks for. */
export const fullGym: AtHand = /* @__PURE__ */ (() => ({
  loads: [...new Set(exercises.flatMap(({ loads }) => loads))],
  fixedForms: ['dumbbell', 'kettlebell', 'barbell'],
  stations: [
    ...new Set(
      exercises.flatMap(({ stations, variants }) => [
        ...stations,
        ...variants.flatMap((variant) => variant.stations ?? []),
      ]),
    ),
  ],
}))();
