import type { Exercise } from '../Exercise.ts';
import { cableStack, dumbbellsOrKettlebells, machine, onePost, ownBody } from './loadings.ts';
import { withStraps } from './setUps.ts';
import { trunk } from './trunkBase.ts';

/** Turning and side-bending. */
export const trunkSides: readonly Exercise[] = /* @__PURE__ */ (() => {
  const twist = {
    ...trunk,
    movement: 'trunk-rotation',
    direct: { obliques: 0.75 },
    indirect: { abdominals: 0.15, 'spinal-erectors': 0.1 },
    actions: ['spine-rotation'],
    positions: ['spine-loaded-twist'],
    sides: 'one',
  } as const satisfies Partial<Exercise>;

  const sideways = {
    ...trunk,
    movement: 'trunk-side',
    direct: { obliques: 0.7 },
    indirect: { 'spinal-erectors': 0.2, 'hip-abductors': 0.1 },
    actions: ['spine-side-flexion'],
    sides: 'one',
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...twist,
      ...cableStack,
      id: 'cable-rotation',
      name: 'Cable trunk rotation',
      stations: ['cable'],
      support: 'standing',
      hands: 2,
      wayBack: 'legs-push',
    },
    {
      ...twist,
      ...machine,
      id: 'machine-rotation',
      name: 'Rotary torso machine',
      stations: ['rotary-torso-machine'],
      support: 'seated',
      hands: 2,
      wayBack: 'legs-push',
    },
    {
      ...twist,
      ...onePost,
      id: 'landmine-rotation',
      name: 'Landmine rotation',
      stations: ['landmine'],
      support: 'standing',
      hands: 2,
      positions: ['spine-loaded-twist', 'spine-upright-load'],
      wayBack: 'set-down-and-restart',
    },
    {
      ...sideways,
      ...ownBody,
      id: 'side-plank',
      name: 'Side plank',
      timed: true,
      support: 'side-lying',
      hands: 1,
      movedShare: { low: 0.5, high: 0.6 },
      holds: [{ at: 'middle', momentArm: 1 }],
    },
    {
      ...sideways,
      ...dumbbellsOrKettlebells,
      id: 'dumbbell-side-bend',
      name: 'Dumbbell side bend',
      support: 'standing',
      hands: 1,
      positions: ['spine-upright-load', 'spine-loaded-bend', 'elbow-hard-grip'],
      wayBack: 'set-down-and-restart',
      variants: [withStraps],
    },
    {
      ...sideways,
      ...cableStack,
      id: 'cable-side-bend',
      name: 'Cable side bend',
      stations: ['cable'],
      support: 'standing',
      hands: 1,
      positions: ['spine-loaded-bend', 'elbow-hard-grip'],
      wayBack: 'legs-push',
    },
  ];
})();
