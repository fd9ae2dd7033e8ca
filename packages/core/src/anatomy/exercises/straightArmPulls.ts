import type { Exercise } from '../Exercise.ts';
import { cableStack, dumbbells, machine } from './loadings.ts';
import { oneArm } from './setUps.ts';

const straightArm = {
  movement: 'straight-arm-pull',
  direct: { lats: 0.55, 'teres-major': 0.18 },
  indirect: { 'triceps-long-head': 0.1, 'rear-deltoid': 0.1, abdominals: 0.04, grip: 0.03 },
  actions: ['shoulder-extension'],
  positions: ['shoulder-overhead'],
  sides: 'both',
  span: 'isolation',
  hands: 2,
  atFailureAlone: 'leave',
  endurance: 'arm-isolation',
} as const satisfies Partial<Exercise>;

const fromEyeLevel = {
  id: 'from-eye-level',
  name: 'From eye level down',
  changes: 'range',
  effect: 'Leaves out the part above the head.',
  removes: ['shoulder-overhead'],
} as const;

/** Pulls with straight arms and pullovers. */
export const straightArmPulls: readonly Exercise[] = /* @__PURE__ */ (() => {
  return [
    {
      ...straightArm,
      ...cableStack,
      id: 'straight-arm-cable-pulldown',
      name: 'Straight-arm cable pulldown',
      stations: ['high-pulley'],
      startsWith: 'lift',
      support: 'standing',
      holds: [
        { at: 'stretched', momentArm: 0.7 },
        { at: 'middle', momentArm: 1 },
        { at: 'contracted', momentArm: 0.8 },
      ],
      wayBack: 'legs-push',
      variants: [fromEyeLevel, oneArm],
    },
    {
      ...straightArm,
      ...machine,
      id: 'machine-pullover',
      name: 'Pullover machine',
      stations: ['pullover-machine'],
      startsWith: 'lift',
      support: 'seated-with-back',
      hands: 2,
      holds: [
        { at: 'stretched', momentArm: 0.9 },
        { at: 'middle', momentArm: 1 },
        { at: 'contracted', momentArm: 1 },
      ],
      wayBack: 'legs-push',
      variants: [{ ...fromEyeLevel, name: 'Start pin set lower', changes: 'seat' }],
    },
    {
      ...straightArm,
      ...dumbbells,
      id: 'dumbbell-pullover',
      name: 'Dumbbell pullover',
      heldWeights: 1,
      stations: ['flat-bench'],
      direct: { lats: 0.45, 'teres-major': 0.15 },
      indirect: { chest: 0.15, 'triceps-long-head': 0.15, serratus: 0.07, grip: 0.03 },
      startsWith: 'lower',
      support: 'lying',
      holds: [
        { at: 'stretched', momentArm: 1 },
        { at: 'middle', momentArm: 0.7 },
      ],
      wayBack: 'set-down-and-restart',
      variants: [
        {
          id: 'short',
          name: 'Only to beside the head',
          changes: 'range',
          effect: 'Leaves out the end of the reach overhead.',
          removes: ['shoulder-overhead'],
        },
      ],
    },
  ];
})();
