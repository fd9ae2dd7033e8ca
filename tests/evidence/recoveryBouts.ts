import type { MuscleId } from '../../packages/core/src/anatomy/index.ts';
import type { TrainingStatus } from '../../packages/core/src/recovery/index.ts';

/** What was measured before and after. Repetitions on the lift are what the library answers for. */
export type Measure = 'repetitions' | 'force' | 'work' | 'jump';

/** One row of `recovery_time_course` in the library's terms. */
export interface Bout {
  /** Index into the rows. */
  readonly row: number;
  readonly muscle: MuscleId;
  readonly sets: number;
  /** The muscle only helps, so that a set counts half. */
  readonly helps?: boolean;
  readonly repsInReserve?: number;
  readonly stagesPastFailure?: number;
  readonly loweringHeavy?: boolean;
  readonly status: TrainingStatus;
  readonly measure: Measure;
  /** What the row leaves open and was taken. */
  readonly taken?: string;
}

const notSaid = 'training not said: taken as recreational';
const overlap = 'sets of the exercise itself; overlap with the others is not counted';

/** The 24 rows with at least one bound in hours. */
export const bouts: readonly Bout[] = [
  { row: 0, muscle: 'vasti', sets: 3, status: 'trained', measure: 'jump' },
  { row: 1, muscle: 'vasti', sets: 3, status: 'recreational', measure: 'jump', taken: notSaid },
  {
    row: 2,
    muscle: 'vasti',
    sets: 3,
    repsInReserve: 4,
    status: 'recreational',
    measure: 'jump',
    taken: notSaid,
  },
  { row: 3, muscle: 'vasti', sets: 3, status: 'recreational', measure: 'jump', taken: notSaid },
  { row: 4, muscle: 'vasti', sets: 8, status: 'trained', measure: 'force' },
  {
    row: 5,
    muscle: 'vasti',
    sets: 8,
    repsInReserve: 1,
    status: 'trained',
    measure: 'force',
    taken: 'sets of three at high intensity: one repetition left',
  },
  { row: 6, muscle: 'chest', sets: 8, status: 'trained', measure: 'force' },
  { row: 7, muscle: 'chest', sets: 8, status: 'trained', measure: 'work' },
  {
    row: 8,
    muscle: 'triceps-long-head',
    sets: 8,
    helps: true,
    status: 'trained',
    measure: 'force',
  },
  { row: 9, muscle: 'triceps-long-head', sets: 8, helps: true, status: 'trained', measure: 'work' },
  {
    row: 10,
    muscle: 'triceps-long-head',
    sets: 8,
    helps: true,
    status: 'trained',
    measure: 'repetitions',
    taken: 'soreness has no offset of its own',
  },
  {
    row: 11,
    muscle: 'chest',
    sets: 2,
    status: 'recreational',
    measure: 'repetitions',
    taken: 'the set at 85 % counts as hard',
  },
  {
    row: 12,
    muscle: 'chest',
    sets: 2,
    status: 'recreational',
    measure: 'repetitions',
    taken: 'the set at 85 % counts as hard',
  },
  {
    row: 13,
    muscle: 'chest',
    sets: 3,
    status: 'recreational',
    measure: 'repetitions',
    taken: notSaid,
  },
  {
    row: 14,
    muscle: 'chest',
    sets: 3,
    status: 'recreational',
    measure: 'repetitions',
    taken: notSaid,
  },
  { row: 15, muscle: 'chest', sets: 7, status: 'trained', measure: 'repetitions', taken: overlap },
  { row: 16, muscle: 'chest', sets: 3, status: 'trained', measure: 'repetitions', taken: overlap },
  {
    row: 17,
    muscle: 'chest',
    sets: 2,
    repsInReserve: 0.75,
    status: 'trained',
    measure: 'repetitions',
    taken: `effort 9 to 9.5 of 10 is 0.75 repetitions left; ${overlap}`,
  },
  { row: 18, muscle: 'biceps', sets: 4, status: 'new', measure: 'force' },
  { row: 19, muscle: 'biceps', sets: 3, loweringHeavy: true, status: 'new', measure: 'force' },
  {
    row: 22,
    muscle: 'biceps',
    sets: 5,
    loweringHeavy: true,
    status: 'new',
    measure: 'force',
    taken: 'five sets for the elbow flexors, the usual protocol of these studies',
  },
  {
    row: 23,
    muscle: 'vasti',
    sets: 3,
    status: 'trained',
    measure: 'force',
    taken: 'ordinary training: three sets to failure',
  },
  { row: 25, muscle: 'vasti', sets: 8, stagesPastFailure: 1, status: 'trained', measure: 'force' },
  {
    row: 26,
    muscle: 'vasti',
    sets: 4,
    status: 'trained',
    measure: 'jump',
    taken: 'number of sets not in the row: four',
  },
];
