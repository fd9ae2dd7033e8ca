import type { Exercise } from '../Exercise.ts';
import { machine, ownBody } from './loadings.ts';

const dipping = {
  movement: 'dip',
  direct: {
    chest: 0.3,
    'triceps-short-heads': 0.22,
    'triceps-long-head': 0.12,
    'front-deltoid': 0.2,
  },
  indirect: { lats: 0.08, 'lower-traps': 0.08 },
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
  hands: 2,
  holds: [
    { at: 'stretched', momentArm: 1 },
    { at: 'middle', momentArm: 0.9 },
  ],
  endurance: 'press',
} as const satisfies Partial<Exercise>;

const upright = {
  id: 'upright',
  name: 'Upright trunk',
  changes: 'lean',
  effect: 'More triceps, less chest.',
  direct: {
    'triceps-short-heads': 0.34,
    'triceps-long-head': 0.16,
    chest: 0.17,
    'front-deltoid': 0.17,
  },
  indirect: { lats: 0.08, 'lower-traps': 0.08 },
} as const;

const halfDepth = {
  id: 'half-depth',
  name: 'To a right angle at the elbow',
  changes: 'range',
  effect: 'Less bend of the elbow; the upper arm still goes behind the trunk.',
  removes: ['elbow-deep-bend'],
} as const;

/** Dips. */
export const dips: readonly Exercise[] = /* @__PURE__ */ (() => {
  return [
    {
      ...dipping,
      ...ownBody,
      id: 'dip',
      name: 'Dip',
      stations: ['dip-bars'],
      support: 'hanging',
      movedShare: { low: 1, high: 1 },
      wayBack: 'step-up',
      atFailureAlone: 'leave',
      variants: [upright, halfDepth],
    },
    {
      ...dipping,
      ...ownBody,
      id: 'assisted-dip',
      name: 'Assisted dip',
      stations: ['assisted-chin-dip-machine'],
      support: 'kneeling',
      positions: ['shoulder-behind-trunk', 'elbow-deep-bend', 'knee-kneeling'],
      movedShare: { low: 1, high: 1 },
      wayBack: 'step-up',
      atFailureAlone: 'leave',
      variants: [upright, halfDepth],
    },
    {
      ...dipping,
      ...machine,
      id: 'machine-dip',
      name: 'Dip machine',
      stations: ['dip-machine'],
      support: 'seated-with-back',
      startsWith: 'lift',
      wayBack: 'partner-only',
      atFailureAlone: 'leave',
      variants: [halfDepth],
    },
    {
      ...dipping,
      ...ownBody,
      id: 'bench-dip',
      name: 'Bench dip',
      stations: ['flat-bench'],
      direct: {
        'triceps-short-heads': 0.38,
        'triceps-long-head': 0.2,
        chest: 0.16,
        'front-deltoid': 0.16,
      },
      indirect: { 'lower-traps': 0.1 },
      support: 'hands-and-feet',
      positions: ['shoulder-behind-trunk', 'elbow-deep-bend', 'wrist-bent-back'],
      movedShare: { low: 0.4, high: 0.7 },
      wayBack: 'legs-push',
      atFailureAlone: 'leave',
      variants: [halfDepth],
    },
  ];
})();
