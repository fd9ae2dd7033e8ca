import type { Exercise } from '../Exercise.ts';
import { anyBar, cableStack, dumbbells } from './loadings.ts';
import { oneArm } from './setUps.ts';

const wrist = {
  movement: 'forearm',
  stations: ['flat-bench'],
  positions: ['elbow-hard-grip'],
  startsWith: 'lift',
  sides: 'both',
  span: 'isolation',
  support: 'seated',
  hands: 2,
  holds: [
    { at: 'middle', momentArm: 1 },
    { at: 'contracted', momentArm: 0.9 },
  ],
  wayBack: 'set-down-and-restart',
  atFailureAlone: 'leave',
  endurance: 'arm-isolation',
} as const satisfies Partial<Exercise>;

/** Wrist curls, both ways, and grip. */
export const forearms: readonly Exercise[] = /* @__PURE__ */ (() => {
  return [
    {
      ...wrist,
      ...anyBar,
      id: 'barbell-wrist-curl',
      name: 'Barbell wrist curl',
      direct: { grip: 1 },
      indirect: {},
      actions: ['wrist-flexion', 'finger-flexion'],
      variants: [],
    },
    {
      ...wrist,
      ...dumbbells,
      id: 'dumbbell-wrist-curl',
      name: 'Dumbbell wrist curl',
      direct: { grip: 1 },
      indirect: {},
      actions: ['wrist-flexion', 'finger-flexion'],
      wayBack: 'other-limb',
      variants: [oneArm],
    },
    {
      ...wrist,
      ...dumbbells,
      id: 'dumbbell-reverse-wrist-curl',
      name: 'Dumbbell reverse wrist curl',
      direct: { 'wrist-extensors': 0.9 },
      indirect: { grip: 0.1 },
      actions: ['wrist-extension'],
      positions: [],
      wayBack: 'other-limb',
      variants: [oneArm],
    },
    {
      ...wrist,
      ...cableStack,
      id: 'cable-wrist-curl',
      name: 'Cable wrist curl',
      stations: ['cable'],
      direct: { grip: 1 },
      indirect: {},
      actions: ['wrist-flexion', 'finger-flexion'],
      variants: [oneArm],
    },
  ];
})();
