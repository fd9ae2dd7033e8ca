import type { Exercise } from '../anatomy/index.ts';

const seatedPress: Exercise = {
  id: 'seated-press',
  name: 'Seated press',
  movement: 'horizontal-press',
  loads: ['stack'],
  stations: [],
  direct: { chest: 0.5, 'front-deltoid': 0.25 },
  indirect: { 'triceps-short-heads': 0.25 },
  actions: ['elbow-extension'],
  positions: [],
  startsWith: 'lift',
  sides: 'both',
  span: 'compound',
  support: 'seated',
  hands: 2,
  holds: [],
  wayBack: 'partner-only',
  atFailureAlone: 'leave',
  eccentricFactor: 1.4,
  endurance: 'press',
  variants: [],
};

/** An exercise of a test: a press on a seat with a stack, but for what is changed. */
export function exerciseWith(id: string, changes: Partial<Exercise> = {}): Exercise {
  return { ...seatedPress, id, ...changes };
}
