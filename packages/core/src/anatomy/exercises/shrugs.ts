import type { Exercise } from '../Exercise.ts';
import { anyBar, barbell, cableStack, dumbbells, dumbbellsOrKettlebells } from './loadings.ts';
import { withStraps } from './setUps.ts';

const uprightRow = {
  movement: 'upright-row',
  direct: { 'side-deltoid': 0.4, 'upper-traps': 0.25 },
  indirect: {
    'front-deltoid': 0.12,
    biceps: 0.08,
    brachialis: 0.08,
    'lower-traps': 0.04,
    grip: 0.03,
  },
  actions: ['shoulder-abduction', 'shoulder-blade-elevation', 'elbow-flexion'],
  startsWith: 'lift',
  sides: 'both',
  span: 'compound',
  support: 'standing',
  hands: 2,
  holds: [
    { at: 'middle', momentArm: 0.85 },
    { at: 'contracted', momentArm: 1 },
  ],
  wayBack: 'legs-push',
  atFailureAlone: 'leave',
  endurance: 'pull',
  variants: [
    {
      id: 'below-shoulder-height',
      name: 'Elbows no higher than the shoulders, wide grip',
      changes: 'range',
      effect: 'Stays under 90 degrees.',
      removes: ['shoulder-raised-turned-in'],
    },
  ],
} as const satisfies Partial<Exercise>;

const shrug = {
  movement: 'shrug',
  direct: { 'upper-traps': 0.75 },
  indirect: { 'mid-back': 0.1, grip: 0.15 },
  actions: ['shoulder-blade-elevation'],
  startsWith: 'lift',
  sides: 'both',
  span: 'isolation',
  hands: 2,
  holds: [
    { at: 'stretched', momentArm: 0.9 },
    { at: 'contracted', momentArm: 1 },
  ],
  wayBack: 'set-down-and-restart',
  atFailureAlone: 'leave',
  endurance: 'arm-isolation',
  variants: [withStraps],
} as const satisfies Partial<Exercise>;

/** Upright rows. */
export const uprightRows: readonly Exercise[] = /* @__PURE__ */ (() => {
  return [
    {
      ...uprightRow,
      ...anyBar,
      id: 'barbell-upright-row',
      name: 'Barbell upright row',
      stations: [],
      positions: ['shoulder-raised-turned-in', 'elbow-palms-down-pull', 'spine-upright-load'],
    },
    {
      ...uprightRow,
      ...dumbbellsOrKettlebells,
      id: 'dumbbell-upright-row',
      name: 'Dumbbell upright row',
      stations: [],
      positions: ['shoulder-raised-turned-in', 'spine-upright-load'],
    },
    {
      ...uprightRow,
      ...cableStack,
      id: 'cable-upright-row',
      name: 'Cable upright row',
      stations: ['cable'],
      positions: ['shoulder-raised-turned-in', 'elbow-palms-down-pull', 'spine-upright-load'],
    },
  ];
})();

/** Shrugs. */
export const shrugs: readonly Exercise[] = /* @__PURE__ */ (() => {
  return [
    {
      ...shrug,
      ...barbell,
      id: 'barbell-shrug',
      name: 'Barbell shrug',
      stations: ['rack'],
      support: 'standing',
      positions: ['spine-upright-load', 'elbow-hard-grip', 'elbow-palms-down-pull'],
    },
    {
      ...shrug,
      ...dumbbellsOrKettlebells,
      id: 'dumbbell-shrug',
      name: 'Dumbbell shrug',
      stations: [],
      support: 'standing',
      positions: ['spine-upright-load', 'elbow-hard-grip'],
    },
    {
      ...shrug,
      ...cableStack,
      id: 'cable-shrug',
      name: 'Cable shrug',
      stations: ['cable'],
      support: 'standing',
      positions: ['spine-upright-load', 'elbow-hard-grip'],
      wayBack: 'legs-push',
    },
    {
      ...shrug,
      ...dumbbells,
      id: 'chest-supported-shrug',
      name: 'Chest-supported shrug',
      stations: ['incline-bench'],
      direct: { 'upper-traps': 0.45, 'mid-back': 0.35 },
      indirect: { 'lower-traps': 0.08, grip: 0.12 },
      actions: ['shoulder-blade-elevation', 'shoulder-blade-retraction'],
      support: 'chest-supported',
      positions: ['elbow-hard-grip'],
      wayBack: 'partner-only',
    },
  ];
})();
