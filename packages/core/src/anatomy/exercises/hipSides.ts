import type { Exercise } from '../Exercise.ts';
import { band, cableStack, machine, ownBody } from './loadings.ts';

const hip = {
  stations: [],
  positions: [],
  startsWith: 'lift',
  sides: 'one',
  span: 'isolation',
  hands: 0,
  holds: [
    { at: 'middle', momentArm: 0.9 },
    { at: 'contracted', momentArm: 1 },
  ],
  wayBack: 'both-limbs',
  atFailureAlone: 'leave',
  endurance: 'leg-isolation',
  variants: [],
} as const satisfies Partial<Exercise>;

/** The hip outwards, inwards and forwards. */
export const hipSides: readonly Exercise[] = /* @__PURE__ */ (() => {
  const outwards = {
    ...hip,
    movement: 'hip-abduction',
    direct: { 'hip-abductors': 0.85 },
    indirect: { glutes: 0.15 },
    actions: ['hip-abduction'],
  } as const satisfies Partial<Exercise>;

  const inwards = {
    ...hip,
    movement: 'hip-adduction',
    direct: { adductors: 0.7 },
    indirect: { 'adductor-magnus': 0.3 },
    actions: ['hip-adduction'],
  } as const satisfies Partial<Exercise>;

  const forwards = {
    ...hip,
    movement: 'hip-flexion',
    direct: { 'hip-flexors': 0.75 },
    indirect: { 'rectus-femoris': 0.25 },
    actions: ['hip-flexion'],
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...outwards,
      ...machine,
      id: 'machine-hip-abduction',
      name: 'Hip abduction machine',
      stations: ['hip-abduction-machine'],
      sides: 'both',
      support: 'seated-with-back',
      wayBack: 'hands-push',
    },
    {
      ...outwards,
      ...cableStack,
      id: 'cable-hip-abduction',
      name: 'Cable hip abduction',
      stations: ['cable'],
      support: 'standing',
      hands: 1,
    },
    {
      ...outwards,
      ...ownBody,
      id: 'side-lying-hip-abduction',
      name: 'Hip abduction lying on the side',
      support: 'side-lying',
      movedShare: { low: 0.16, high: 0.16 },
    },
    {
      ...outwards,
      ...band,
      id: 'band-side-walk',
      name: 'Side walk with a band',
      support: 'standing',
      holds: [{ at: 'contracted', momentArm: 1 }],
    },
    {
      ...inwards,
      ...machine,
      id: 'machine-hip-adduction',
      name: 'Hip adduction machine',
      stations: ['hip-adduction-machine'],
      sides: 'both',
      support: 'seated-with-back',
      wayBack: 'hands-push',
    },
    {
      ...inwards,
      ...cableStack,
      id: 'cable-hip-adduction',
      name: 'Cable hip adduction',
      stations: ['cable'],
      support: 'standing',
      hands: 1,
    },
    {
      ...inwards,
      ...ownBody,
      id: 'adductor-side-plank',
      name: 'Side plank on the upper leg',
      stations: ['flat-bench'],
      direct: { adductors: 0.55, obliques: 0.25 },
      indirect: { 'adductor-magnus': 0.2 },
      actions: ['hip-adduction', 'spine-side-flexion'],
      span: 'compound',
      support: 'side-lying',
      hands: 1,
      movedShare: { low: 0.4, high: 0.6 },
    },
    {
      ...forwards,
      ...cableStack,
      id: 'cable-hip-flexion',
      name: 'Cable hip flexion',
      stations: ['cable'],
      support: 'standing',
      hands: 1,
    },
    {
      ...forwards,
      ...ownBody,
      id: 'lying-leg-raise',
      name: 'Lying leg raise',
      direct: { 'hip-flexors': 0.5 },
      indirect: { 'rectus-femoris': 0.15, abdominals: 0.3, obliques: 0.05 },
      sides: 'both',
      support: 'lying',
      movedShare: { low: 0.32, high: 0.32 },
      holds: [{ at: 'stretched', momentArm: 1 }],
      wayBack: 'hands-push',
    },
    {
      ...forwards,
      ...band,
      id: 'band-hip-flexion',
      name: 'Band hip flexion',
      support: 'standing',
      holds: [{ at: 'contracted', momentArm: 1 }],
    },
  ];
})();
