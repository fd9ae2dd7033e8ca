import type { Exercise } from '../Exercise.ts';

/** What trunk exercises have in common. */
export const trunk = {
  stations: [],
  positions: [],
  startsWith: 'lift',
  sides: 'both',
  span: 'isolation',
  hands: 0,
  holds: [
    { at: 'middle', momentArm: 0.9 },
    { at: 'contracted', momentArm: 1 },
  ],
  wayBack: 'hands-push',
  atFailureAlone: 'leave',
  endurance: 'trunk',
  variants: [],
} as const satisfies Partial<Exercise>;
