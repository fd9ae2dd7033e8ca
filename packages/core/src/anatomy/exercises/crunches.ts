import type { Exercise } from '../Exercise.ts';
import { cableStack, dumbbells, machine, ownBody } from './loadings.ts';
import { trunk } from './trunkBase.ts';

/** Bending the trunk forwards. */
export const crunches: readonly Exercise[] = /* @__PURE__ */ (() => {
  const crunch = {
    ...trunk,
    movement: 'trunk-flexion',
    direct: { abdominals: 0.75 },
    indirect: { obliques: 0.25 },
    actions: ['spine-flexion'],
    positions: ['spine-loaded-bend'],
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...crunch,
      ...ownBody,
      id: 'crunch',
      name: 'Crunch',
      support: 'lying',
      movedShare: { low: 0.3, high: 0.4 },
    },
    {
      ...crunch,
      ...dumbbells,
      id: 'weighted-crunch',
      name: 'Crunch with a weight on the chest',
      heldWeights: 1,
      support: 'lying',
      hands: 2,
      wayBack: 'set-down-and-restart',
    },
    {
      ...crunch,
      ...cableStack,
      id: 'cable-crunch',
      name: 'Kneeling cable crunch',
      stations: ['high-pulley'],
      support: 'kneeling',
      hands: 2,
      positions: ['spine-loaded-bend', 'knee-kneeling'],
      wayBack: 'legs-push',
    },
    {
      ...crunch,
      ...machine,
      id: 'machine-crunch',
      name: 'Crunch machine',
      stations: ['crunch-machine'],
      support: 'seated-with-back',
      wayBack: 'legs-push',
    },
    {
      ...crunch,
      ...ownBody,
      id: 'hanging-knee-raise',
      name: 'Hanging knee raise',
      stations: ['chin-up-bar'],
      direct: { abdominals: 0.5, 'hip-flexors': 0.3 },
      indirect: { obliques: 0.15, grip: 0.05 },
      actions: ['spine-flexion', 'hip-flexion'],
      span: 'compound',
      support: 'hanging',
      hands: 2,
      positions: ['shoulder-hanging', 'shoulder-overhead', 'elbow-hard-grip'],
      movedShare: { low: 0.32, high: 0.4 },
      wayBack: 'step-up',
    },
    {
      ...crunch,
      ...ownBody,
      id: 'reverse-crunch',
      name: 'Reverse crunch',
      direct: { abdominals: 0.65 },
      indirect: { obliques: 0.2, 'hip-flexors': 0.15 },
      support: 'lying',
      movedShare: { low: 0.32, high: 0.45 },
    },
  ];
})();
