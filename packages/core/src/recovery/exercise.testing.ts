import type { Exercise, ExerciseShares } from '../anatomy/index.ts';

/** An exercise that works the muscles a test names, so that tests do not lean on the shares of real ones. */
export function testExercise(direct: ExerciseShares, indirect: ExerciseShares = {}): Exercise {
  return {
    id: 'test',
    name: 'Test',
    movement: 'knee-extension',
    loads: ['stack'],
    stations: [],
    direct,
    indirect,
    actions: [],
    positions: [],
    startsWith: 'lift',
    sides: 'both',
    span: 'isolation',
    support: 'seated',
    hands: 0,
    holds: [],
    wayBack: 'both-limbs',
    atFailureAlone: 'leave',
    eccentricFactor: 1.4,
    endurance: 'leg-isolation',
    variants: [],
  };
}
