import type { Exercise } from '../Exercise.ts';
import { FREE_WEIGHT_ECCENTRIC } from '../eccentricFactors.ts';

/** Hip hinges and thrusts. */
export const hips: readonly Exercise[] = [
  {
    id: 'romanian-deadlift',
    name: 'Romanian deadlift',
    movement: 'hip-hinge',
    loads: ['barbell'],
    stations: [],
    direct: { hamstrings: 0.35, glutes: 0.25, 'spinal-erectors': 0.2 },
    indirect: { 'adductor-magnus': 0.1, grip: 0.06, 'upper-traps': 0.04 },
    actions: ['hip-extension', 'spine-extension'],
    positions: [
      'spine-unsupported-hinge',
      'spine-upright-load',
      'hip-deep-bend',
      'elbow-hard-grip',
      'elbow-palms-down-pull',
    ],
    startsWith: 'lower',
    sides: 'both',
    span: 'compound',
    support: 'standing',
    hands: 2,
    holds: [
      { at: 'stretched', momentArm: 1 },
      { at: 'middle', momentArm: 0.8 },
    ],
    wayBack: 'set-down-and-restart',
    atFailureAlone: 'leave',
    eccentricFactor: FREE_WEIGHT_ECCENTRIC,
    endurance: 'hinge',
    variants: [
      {
        id: 'to-knee',
        name: 'Down to the knee',
        changes: 'range',
        effect: 'Stops before the hips are fully bent.',
        removes: ['hip-deep-bend'],
      },
      {
        id: 'straps',
        name: 'With straps',
        changes: 'straps',
        effect: 'The hands hold on less hard, so that the grip is not what fails.',
        removes: ['elbow-hard-grip'],
      },
    ],
  },
];
