import type { Exercise } from '../Exercise.ts';
import { band, cableStack, dumbbells, machine } from './loadings.ts';
import { oneArm, raiseBelowShoulder } from './setUps.ts';

const raise = {
  stations: [],
  startsWith: 'lift',
  sides: 'both',
  span: 'isolation',
  hands: 2,
  holds: [
    { at: 'middle', momentArm: 0.75 },
    { at: 'contracted', momentArm: 1 },
  ],
  wayBack: 'legs-push',
  atFailureAlone: 'leave',
  endurance: 'arm-isolation',
} as const satisfies Partial<Exercise>;

/** Lateral and front raises. */
export const shoulderRaises: readonly Exercise[] = /* @__PURE__ */ (() => {
  const lateral = {
    ...raise,
    movement: 'lateral-raise',
    direct: { 'side-deltoid': 0.65 },
    indirect: { supraspinatus: 0.13, 'upper-traps': 0.12, 'front-deltoid': 0.1 },
    actions: ['shoulder-abduction', 'shoulder-blade-upward-rotation'],
    variants: [raiseBelowShoulder, oneArm],
  } as const satisfies Partial<Exercise>;

  const frontRaise = {
    ...raise,
    movement: 'front-raise',
    direct: { 'front-deltoid': 0.6 },
    indirect: { 'upper-chest': 0.15, 'side-deltoid': 0.15, serratus: 0.1 },
    actions: ['shoulder-flexion', 'shoulder-blade-upward-rotation'],
    support: 'standing',
    positions: ['spine-upright-load'],
    variants: [oneArm],
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...lateral,
      ...dumbbells,
      id: 'dumbbell-lateral-raise',
      name: 'Dumbbell lateral raise',
      support: 'standing',
      positions: ['shoulder-raised-turned-in', 'spine-upright-load'],
    },
    {
      ...lateral,
      ...dumbbells,
      id: 'side-lying-lateral-raise',
      name: 'Lateral raise lying on the side',
      stations: ['incline-bench'],
      sides: 'one',
      hands: 1,
      support: 'side-lying',
      positions: [],
      holds: [
        { at: 'stretched', momentArm: 0.8 },
        { at: 'middle', momentArm: 1 },
      ],
      wayBack: 'other-limb',
      variants: [],
    },
    {
      ...lateral,
      ...dumbbells,
      id: 'chest-supported-lateral-raise',
      name: 'Chest-supported lateral raise',
      stations: ['incline-bench'],
      support: 'chest-supported',
      positions: ['shoulder-raised-turned-in'],
      wayBack: 'partner-only',
    },
    {
      ...lateral,
      ...cableStack,
      id: 'cable-lateral-raise',
      name: 'Cable lateral raise',
      stations: ['cable'],
      sides: 'one',
      hands: 1,
      support: 'standing',
      positions: ['shoulder-raised-turned-in', 'spine-upright-load'],
      holds: [
        { at: 'stretched', momentArm: 0.9 },
        { at: 'middle', momentArm: 1 },
        { at: 'contracted', momentArm: 0.8 },
      ],
      wayBack: 'other-limb',
      variants: [raiseBelowShoulder],
    },
    {
      ...lateral,
      ...machine,
      id: 'machine-lateral-raise',
      name: 'Lateral raise machine',
      stations: ['lateral-raise-machine'],
      support: 'seated',
      hands: 2,
      positions: ['shoulder-raised-turned-in'],
      holds: [
        { at: 'middle', momentArm: 1 },
        { at: 'contracted', momentArm: 1 },
      ],
      wayBack: 'partner-only',
      variants: [raiseBelowShoulder],
    },
    {
      ...lateral,
      ...band,
      id: 'band-lateral-raise',
      name: 'Band lateral raise',
      support: 'standing',
      positions: ['shoulder-raised-turned-in', 'spine-upright-load'],
      holds: [{ at: 'contracted', momentArm: 1 }],
    },
    {
      ...frontRaise,
      ...dumbbells,
      id: 'dumbbell-front-raise',
      name: 'Dumbbell front raise',
    },
    {
      ...frontRaise,
      ...cableStack,
      id: 'cable-front-raise',
      name: 'Cable front raise',
      stations: ['cable'],
    },
    {
      ...frontRaise,
      ...dumbbells,
      id: 'chest-supported-y-raise',
      name: 'Chest-supported Y raise',
      stations: ['incline-bench'],
      direct: { 'lower-traps': 0.4, 'side-deltoid': 0.2 },
      indirect: { 'front-deltoid': 0.2, supraspinatus: 0.1, serratus: 0.1 },
      actions: ['shoulder-flexion', 'shoulder-abduction', 'shoulder-blade-upward-rotation'],
      support: 'chest-supported',
      positions: ['shoulder-overhead'],
      wayBack: 'partner-only',
    },
  ];
})();
