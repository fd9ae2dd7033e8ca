import type { Exercise } from '../Exercise.ts';
import { barbell, cableStack, dumbbells, machine, ownBody } from './loadings.ts';
import { oneLeg } from './setUps.ts';

const thrust = {
  movement: 'hip-thrust',
  direct: { glutes: 0.65 },
  indirect: { hamstrings: 0.2, vasti: 0.15 },
  actions: ['hip-extension', 'knee-extension'],
  stations: [],
  positions: [],
  startsWith: 'lift',
  sides: 'both',
  span: 'compound',
  support: 'lying',
  hands: 0,
  holds: [
    { at: 'middle', momentArm: 0.85 },
    { at: 'contracted', momentArm: 1 },
  ],
  wayBack: 'hands-push',
  atFailureAlone: 'leave',
  endurance: 'hinge',
} as const satisfies Partial<Exercise>;

/** Hip thrusts, bridges and kickbacks. */
export const hipThrusts: readonly Exercise[] = /* @__PURE__ */ (() => {
  const kickback = {
    ...thrust,
    direct: { glutes: 0.8 },
    indirect: { hamstrings: 0.2 },
    actions: ['hip-extension'],
    sides: 'one',
    span: 'isolation',
    wayBack: 'both-limbs',
    endurance: 'leg-isolation',
    variants: [],
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...thrust,
      ...barbell,
      id: 'barbell-hip-thrust',
      name: 'Barbell hip thrust',
      stations: ['flat-bench'],
      hands: 2,
      wayBack: 'partner-only',
      variants: [],
    },
    {
      ...thrust,
      ...dumbbells,
      id: 'dumbbell-hip-thrust',
      name: 'Dumbbell hip thrust',
      heldWeights: 1,
      stations: ['flat-bench'],
      hands: 2,
      wayBack: 'partner-only',
      variants: [oneLeg],
    },
    {
      ...thrust,
      ...dumbbells,
      id: 'dumbbell-glute-bridge',
      name: 'Dumbbell glute bridge',
      heldWeights: 1,
      hands: 2,
      wayBack: 'partner-only',
      variants: [oneLeg],
    },
    {
      ...thrust,
      ...machine,
      id: 'machine-hip-thrust',
      name: 'Hip thrust machine',
      stations: ['hip-thrust-machine'],
      wayBack: 'partner-only',
      variants: [oneLeg],
    },
    {
      ...thrust,
      ...ownBody,
      id: 'glute-bridge',
      name: 'Glute bridge',
      movedShare: { low: 0.4, high: 0.6 },
      variants: [oneLeg],
    },
    {
      ...kickback,
      ...cableStack,
      id: 'cable-kickback',
      name: 'Cable hip extension',
      stations: ['cable'],
      support: 'standing',
      hands: 1,
    },
    {
      ...kickback,
      ...machine,
      id: 'machine-hip-extension',
      name: 'Glute machine',
      stations: ['glute-machine'],
      support: 'chest-supported',
    },
  ];
})();
