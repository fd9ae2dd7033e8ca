import { type Exercise, exercises } from '@windlass/core/anatomy';

/** What recovery reads of an exercise of a session. */
export type KindLift = Pick<Exercise, 'id' | 'direct' | 'indirect'>;

/** Exercises that stand for what a session trains; others for the same muscles ask for the same hours. */
const IDS = {
  whole: ['leg-press', 'seated-leg-curl', 'cable-row', 'seated-dumbbell-press'],
  upper: ['cable-row', 'cable-pulldown', 'dumbbell-bench-press', 'seated-dumbbell-press'],
  pull: ['cable-row', 'cable-pulldown', 'dumbbell-curl'],
  push: ['dumbbell-bench-press', 'seated-dumbbell-press', 'cable-pushdown'],
  legs: ['leg-press', 'leg-extension', 'seated-leg-curl', 'standing-machine-calf-raise'],
  hips: ['romanian-deadlift', 'dumbbell-hip-thrust', 'back-extension'],
  arms: ['dumbbell-curl', 'cable-pushdown', 'reverse-curl'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type SessionKindId = keyof typeof IDS;

export const sessionKinds: Readonly<Record<string, readonly KindLift[]>> = Object.fromEntries(
  Object.entries(IDS).map(([kind, ids]) => [
    kind,
    ids.flatMap((id) =>
      exercises
        .filter((exercise) => exercise.id === id)
        .map(({ direct, indirect }) => ({ id, direct, indirect })),
    ),
  ]),
);
