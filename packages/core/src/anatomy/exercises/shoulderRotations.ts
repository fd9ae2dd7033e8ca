import type { Exercise } from '../Exercise.ts';
import { band, cableStack, dumbbells } from './loadings.ts';

const rotation = {
  movement: 'shoulder-rotation',
  direct: { 'external-rotators': 0.8 },
  indirect: { 'rear-deltoid': 0.2 },
  actions: ['shoulder-external-rotation'],
  positions: [],
  startsWith: 'lift',
  sides: 'one',
  span: 'isolation',
  hands: 1,
  holds: [
    { at: 'middle', momentArm: 0.9 },
    { at: 'contracted', momentArm: 1 },
  ],
  wayBack: 'other-limb',
  atFailureAlone: 'leave',
  endurance: 'arm-isolation',
  variants: [],
} as const satisfies Partial<Exercise>;

/** Turning the arm out and in. */
export const shoulderRotations: readonly Exercise[] = /* @__PURE__ */ (() => {
  return [
    {
      ...rotation,
      ...cableStack,
      id: 'cable-external-rotation',
      name: 'Cable external rotation',
      stations: ['cable'],
      support: 'standing',
    },
    {
      ...rotation,
      ...cableStack,
      id: 'cable-internal-rotation',
      name: 'Cable internal rotation',
      stations: ['cable'],
      direct: { subscapularis: 0.7 },
      indirect: { chest: 0.15, lats: 0.15 },
      actions: ['shoulder-internal-rotation'],
      support: 'standing',
    },
    {
      ...rotation,
      ...dumbbells,
      id: 'side-lying-external-rotation',
      name: 'External rotation lying on the side',
      stations: [],
      support: 'side-lying',
    },
    {
      ...rotation,
      ...band,
      id: 'band-external-rotation',
      name: 'Band external rotation',
      stations: [],
      support: 'standing',
      holds: [{ at: 'contracted', momentArm: 1 }],
    },
  ];
})();
