import type { Exercise } from '../Exercise.ts';
import { FREE_WEIGHT_ECCENTRIC } from '../eccentricFactors.ts';

/** Curls. */
export const curls: readonly Exercise[] = [
  {
    id: 'dumbbell-curl',
    name: 'Dumbbell curl',
    movement: 'curl',
    loads: ['fixed', 'handles'],
    stations: [],
    direct: { biceps: 0.45, brachialis: 0.3 },
    indirect: { brachioradialis: 0.15, grip: 0.1 },
    actions: ['elbow-flexion'],
    positions: ['elbow-hard-grip'],
    startsWith: 'lift',
    sides: 'both',
    span: 'isolation',
    support: 'standing',
    hands: 2,
    holds: [
      { at: 'stretched', momentArm: 0.3 },
      { at: 'middle', momentArm: 1 },
      { at: 'contracted', momentArm: 0.6 },
    ],
    wayBack: 'other-limb',
    atFailureAlone: 'leave',
    eccentricFactor: FREE_WEIGHT_ECCENTRIC,
    endurance: 'arm-isolation',
    variants: [
      {
        id: 'hammer-grip',
        name: 'Hammer grip',
        changes: 'grip',
        effect: 'Thumbs up: more brachialis and brachioradialis, less biceps.',
        direct: { brachialis: 0.35, brachioradialis: 0.3 },
        indirect: { biceps: 0.25, grip: 0.1 },
      },
      {
        id: 'one-arm',
        name: 'One arm at a time',
        changes: 'stance',
        effect: 'One hand works and the other carries nothing.',
        hands: 1,
      },
    ],
  },
];
