import type { Source } from '../basis/index.ts';

/** Lifts that published equations were made for. */
export type EquationLift = 'bench-press' | 'leg-press' | 'knee-extension' | 'squat' | 'deadlift';

/** A published equation for the one-rep max from one set to failure. */
export interface OneRepMaxEquation {
  readonly id: string;
  readonly name: string;
  /** As published, with w the load in kg and r the repetitions. */
  readonly formula: string;
  readonly source: Source;
  /** Who and what it was made from. */
  readonly madeFrom: string;
  /** The lift it holds for; any when left out. */
  readonly lift?: EquationLift;
  /** Repetitions it holds for, both ends included. */
  readonly validReps?: readonly [number, number];
  /** Shares of the one-rep max it holds for, both ends included. */
  readonly validShares?: readonly [number, number];
  /** Error that was published for it, or for its kind. */
  readonly knownError: string;
  /** The one-rep max in kg; not finite or not above 0 where the equation breaks down. */
  readonly oneRepMaxKg: (loadKg: number, reps: number) => number;
}
