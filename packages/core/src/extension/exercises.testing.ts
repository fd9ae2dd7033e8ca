import type { ChainExercise } from './Stage.ts';

/** Set-ups of four kinds, for tests: left at any point, stops needed, only a partner, no hold. */
export const pulldown: ChainExercise = {
  name: 'Machine pulldown',
  holds: [
    { at: 'stretched', momentArm: 0.6 },
    { at: 'middle', momentArm: 0.9 },
    { at: 'contracted', momentArm: 1 },
  ],
  wayBack: 'partner-only',
  atFailureAlone: 'leave',
  eccentricFactor: 1.4,
};

export const chinUp: ChainExercise = {
  name: 'Chin-up',
  holds: [
    { at: 'stretched', momentArm: 0.4 },
    { at: 'middle', momentArm: 1 },
    { at: 'contracted', momentArm: 0.95 },
  ],
  wayBack: 'step-up',
  atFailureAlone: 'leave',
  eccentricFactor: 1.25,
};

export const benchPress: ChainExercise = {
  name: 'Barbell bench press',
  holds: [{ at: 'middle', momentArm: 1 }],
  wayBack: 'partner-only',
  atFailureAlone: 'needs-stops',
  eccentricFactor: 1.25,
};

export const deadHang: ChainExercise = {
  name: 'Overhead lift',
  holds: [],
  wayBack: 'partner-only',
  atFailureAlone: 'needs-partner',
  eccentricFactor: 1.25,
};
