import { type Exercise, findExercise } from '../anatomy/index.ts';
import { kg } from '../load/index.ts';
import { enduranceCurves, type PerformedSet, priorFor, strengthFrom } from '../strength/index.ts';

/** The exercise of that id. */
export function named(id: string): Exercise {
  const found = findExercise(id);
  if (found.kind !== 'found') throw new Error(`${id} has left the list of exercises`);
  return found.exercise;
}

/** What sets of a pull say about its strength on a day. */
export function beliefOf(sets: readonly PerformedSet[], today: number) {
  const belief = strengthFrom({ sets, prior: priorFor(enduranceCurves.pull), today });
  if (belief.kind !== 'posterior') throw new Error('nothing known');
  return belief;
}

/** A set to failure. */
export function done(load: number, reps: number, day: number): PerformedSet {
  return { load: kg(load), reps, end: { kind: 'failure' }, day };
}
