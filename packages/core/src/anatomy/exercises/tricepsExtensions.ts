import type { Exercise } from '../Exercise.ts';
import { anyBar, band, cableStack, dumbbells, machine } from './loadings.ts';
import { oneArm } from './setUps.ts';

const extension = {
  movement: 'triceps-extension',
  direct: { 'triceps-short-heads': 0.6, 'triceps-long-head': 0.4 },
  indirect: {},
  actions: ['elbow-extension'],
  stations: [],
  sides: 'both',
  span: 'isolation',
  hands: 2,
  atFailureAlone: 'leave',
  endurance: 'arm-isolation',
} as const satisfies Partial<Exercise>;

const longHead = {
  direct: { 'triceps-long-head': 0.55, 'triceps-short-heads': 0.45 },
} as const;

const lyingHolds = [
  { at: 'stretched', momentArm: 0.9 },
  { at: 'middle', momentArm: 1 },
] as const;

const lessBend = {
  id: 'right-angle',
  name: 'Only to a right angle at the elbow',
  changes: 'range',
  effect: 'Leaves out the deep bend.',
  removes: ['elbow-deep-bend'],
} as const;

/** Triceps extensions. */
export const tricepsExtensions: readonly Exercise[] = /* @__PURE__ */ (() => {
  return [
    {
      ...extension,
      ...cableStack,
      id: 'cable-pushdown',
      name: 'Cable pushdown',
      stations: ['high-pulley'],
      positions: [],
      startsWith: 'lift',
      support: 'standing',
      holds: [
        { at: 'stretched', momentArm: 0.7 },
        { at: 'middle', momentArm: 1 },
        { at: 'contracted', momentArm: 0.7 },
      ],
      wayBack: 'legs-push',
      variants: [
        {
          id: 'rope',
          name: 'With a rope',
          changes: 'grip',
          effect: 'Palms face each other and the hands can turn.',
        },
        oneArm,
      ],
    },
    {
      ...extension,
      ...cableStack,
      ...longHead,
      id: 'overhead-cable-triceps-extension',
      name: 'Overhead cable extension',
      stations: ['cable'],
      positions: ['elbow-deep-bend', 'shoulder-overhead'],
      startsWith: 'lift',
      support: 'standing',
      holds: lyingHolds,
      wayBack: 'legs-push',
      variants: [lessBend, oneArm],
    },
    {
      ...extension,
      ...dumbbells,
      ...longHead,
      id: 'overhead-dumbbell-triceps-extension',
      name: 'Overhead dumbbell extension',
      heldWeights: 1,
      positions: ['elbow-deep-bend', 'shoulder-overhead', 'spine-seated-load'],
      startsWith: 'lower',
      support: 'seated',
      stations: ['chair'],
      holds: lyingHolds,
      wayBack: 'set-down-and-restart',
      variants: [lessBend, oneArm],
    },
    {
      ...extension,
      ...anyBar,
      id: 'lying-triceps-extension',
      name: 'Lying triceps extension',
      stations: ['flat-bench'],
      positions: ['elbow-deep-bend'],
      startsWith: 'lower',
      support: 'lying',
      holds: lyingHolds,
      wayBack: 'partner-only',
      atFailureAlone: 'needs-partner',
      variants: [lessBend],
    },
    {
      ...extension,
      ...dumbbells,
      id: 'lying-dumbbell-triceps-extension',
      name: 'Lying dumbbell triceps extension',
      stations: ['flat-bench'],
      positions: ['elbow-deep-bend'],
      startsWith: 'lower',
      support: 'lying',
      holds: lyingHolds,
      wayBack: 'set-down-and-restart',
      variants: [lessBend, oneArm],
    },
    {
      ...extension,
      ...dumbbells,
      id: 'dumbbell-kickback',
      name: 'Dumbbell kickback',
      heldWeights: 1,
      stations: ['flat-bench'],
      positions: [],
      startsWith: 'lift',
      sides: 'one',
      support: 'hand-supported',
      holds: [
        { at: 'middle', momentArm: 0.7 },
        { at: 'contracted', momentArm: 1 },
      ],
      wayBack: 'partner-only',
      variants: [],
    },
    {
      ...extension,
      ...machine,
      id: 'machine-triceps-extension',
      name: 'Triceps machine',
      stations: ['triceps-machine'],
      positions: ['elbow-deep-bend'],
      startsWith: 'lift',
      support: 'seated-with-back',
      holds: [
        { at: 'stretched', momentArm: 0.9 },
        { at: 'middle', momentArm: 1 },
        { at: 'contracted', momentArm: 1 },
      ],
      wayBack: 'partner-only',
      variants: [{ ...lessBend, name: 'Start pin set lower', changes: 'seat' }, oneArm],
    },
    {
      ...extension,
      ...band,
      id: 'band-pushdown',
      name: 'Band pushdown',
      stations: ['chin-up-bar'],
      positions: [],
      startsWith: 'lift',
      support: 'standing',
      holds: [{ at: 'contracted', momentArm: 1 }],
      wayBack: 'legs-push',
      variants: [oneArm],
    },
  ];
})();
