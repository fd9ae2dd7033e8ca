import type { Exercise } from '../Exercise.ts';
import { cableStack, dumbbells, machine } from './loadings.ts';
import { oneArm } from './setUps.ts';

const fly = {
  movement: 'chest-fly',
  direct: { chest: 0.6, 'upper-chest': 0.2 },
  indirect: { 'front-deltoid': 0.2 },
  actions: ['shoulder-horizontal-adduction'],
  positions: ['shoulder-behind-trunk'],
  sides: 'both',
  span: 'isolation',
  hands: 2,
  endurance: 'arm-isolation',
} as const satisfies Partial<Exercise>;

const shortened = {
  id: 'to-trunk-level',
  name: 'Only to trunk level',
  changes: 'range',
  effect: 'Turns round before the upper arm goes behind the trunk.',
  removes: ['shoulder-behind-trunk'],
} as const;

const towardsUpperChest = {
  direct: { 'upper-chest': 0.5, chest: 0.28 },
  indirect: { 'front-deltoid': 0.22 },
} as const;

const dumbbellHolds = [
  { at: 'stretched', momentArm: 1 },
  { at: 'middle', momentArm: 0.7 },
] as const;

/** Flies for the chest. */
export const chestFlies: readonly Exercise[] = /* @__PURE__ */ (() => {
  return [
    {
      ...fly,
      ...dumbbells,
      id: 'dumbbell-fly',
      name: 'Dumbbell fly',
      stations: ['flat-bench'],
      startsWith: 'lower',
      support: 'lying',
      holds: dumbbellHolds,
      wayBack: 'set-down-and-restart',
      atFailureAlone: 'leave',
      variants: [
        {
          ...shortened,
          id: 'on-floor',
          name: 'From the floor',
          effect: 'The floor stops the arm.',
        },
      ],
    },
    {
      ...fly,
      ...dumbbells,
      ...towardsUpperChest,
      id: 'incline-dumbbell-fly',
      name: 'Incline dumbbell fly',
      stations: ['incline-bench'],
      startsWith: 'lower',
      support: 'seated-with-back',
      holds: dumbbellHolds,
      wayBack: 'set-down-and-restart',
      atFailureAlone: 'leave',
      variants: [shortened],
    },
    {
      ...fly,
      ...cableStack,
      id: 'cable-fly',
      name: 'Cable fly',
      stations: ['cable'],
      startsWith: 'lift',
      support: 'standing',
      holds: [
        { at: 'stretched', momentArm: 0.8 },
        { at: 'middle', momentArm: 0.95 },
        { at: 'contracted', momentArm: 1 },
      ],
      wayBack: 'legs-push',
      atFailureAlone: 'leave',
      variants: [
        shortened,
        oneArm,
        {
          id: 'low-to-high',
          name: 'From low to high',
          changes: 'elbow-path',
          effect: 'More upper chest and front deltoid.',
          ...towardsUpperChest,
        },
      ],
    },
    {
      ...fly,
      ...machine,
      id: 'machine-fly',
      name: 'Fly machine',
      stations: ['fly-machine'],
      startsWith: 'lift',
      support: 'seated-with-back',
      holds: [
        { at: 'stretched', momentArm: 0.9 },
        { at: 'middle', momentArm: 0.95 },
        { at: 'contracted', momentArm: 1 },
      ],
      wayBack: 'partner-only',
      atFailureAlone: 'leave',
      variants: [{ ...shortened, name: 'Start pin set forward', changes: 'seat' }, oneArm],
    },
  ];
})();
