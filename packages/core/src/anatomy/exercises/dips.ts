import type { Exercise } from '../Exercise.ts';
import { FREE_WEIGHT_ECCENTRIC } from '../eccentricFactors.ts';

/** Dips. */
export const dips: readonly Exercise[] = [
  {
    id: 'dip',
    name: 'Dip',
    movement: 'dip',
    loads: ['body'],
    stations: ['dip-bars'],
    direct: {
      chest: 0.35,
      'triceps-long-head': 0.1,
      'triceps-short-heads': 0.2,
      'front-deltoid': 0.2,
    },
    indirect: { lats: 0.08, 'lower-traps': 0.07 },
    actions: [
      'shoulder-flexion',
      'shoulder-adduction',
      'elbow-extension',
      'shoulder-blade-depression',
    ],
    positions: ['shoulder-behind-trunk', 'elbow-deep-bend'],
    startsWith: 'lower',
    sides: 'both',
    span: 'compound',
    support: 'hanging',
    hands: 2,
    movedShare: { low: 1, high: 1 },
    holds: [
      { at: 'stretched', momentArm: 1 },
      { at: 'middle', momentArm: 0.9 },
    ],
    wayBack: 'step-up',
    atFailureAlone: 'leave',
    eccentricFactor: FREE_WEIGHT_ECCENTRIC,
    endurance: 'press',
    variants: [
      {
        id: 'upright',
        name: 'Upright trunk',
        changes: 'lean',
        effect: 'More triceps, less chest.',
        direct: { 'triceps-short-heads': 0.35, 'triceps-long-head': 0.15, chest: 0.2 },
        indirect: { 'front-deltoid': 0.15, lats: 0.08, 'lower-traps': 0.07 },
      },
      {
        id: 'half-depth',
        name: 'To a right angle at the elbow',
        changes: 'range',
        effect: 'Stops before the upper arm goes behind the trunk.',
        removes: ['shoulder-behind-trunk', 'elbow-deep-bend'],
      },
    ],
  },
];
