import type { Exercise } from './Exercise.ts';
import { curls } from './exercises/arms.ts';
import { dips } from './exercises/dips.ts';
import { hips } from './exercises/hips.ts';
import { lowerLegs } from './exercises/lowerLegs.ts';
import { rows } from './exercises/rows.ts';
import { thighs } from './exercises/thighs.ts';
import { verticalPulls } from './exercises/verticalPulls.ts';

/** Every exercise the library knows. An application may add its own of the same shape. */
export const exercises: readonly Exercise[] = [
  ...rows,
  ...verticalPulls,
  ...dips,
  ...curls,
  ...thighs,
  ...hips,
  ...lowerLegs,
];
