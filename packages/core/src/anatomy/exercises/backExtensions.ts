import type { Exercise } from '../Exercise.ts';
import { dumbbells, machine, ownBody } from './loadings.ts';
import { trunk } from './trunkBase.ts';

/** Straightening the trunk. */
export const backExtensions: readonly Exercise[] = /* @__PURE__ */ (() => {
  const backwards = {
    ...trunk,
    movement: 'trunk-extension',
    direct: { 'spinal-erectors': 0.5, glutes: 0.25 },
    indirect: { hamstrings: 0.25 },
    actions: ['spine-extension', 'hip-extension'],
    span: 'compound',
    endurance: 'hinge',
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...backwards,
      ...ownBody,
      id: 'back-extension',
      name: 'Back extension',
      stations: ['back-extension-bench'],
      support: 'face-down',
      positions: ['spine-unsupported-hinge', 'spine-loaded-bend', 'hip-deep-bend'],
      startsWith: 'lower',
      movedShare: { low: 0.5, high: 0.6 },
    },
    {
      ...backwards,
      ...dumbbells,
      id: 'weighted-back-extension',
      name: 'Back extension with a weight',
      heldWeights: 1,
      stations: ['back-extension-bench'],
      support: 'face-down',
      hands: 2,
      positions: ['spine-unsupported-hinge', 'spine-loaded-bend', 'hip-deep-bend'],
      startsWith: 'lower',
      wayBack: 'set-down-and-restart',
    },
    {
      ...backwards,
      ...machine,
      id: 'machine-back-extension',
      name: 'Back extension machine',
      stations: ['back-extension-machine'],
      direct: { 'spinal-erectors': 0.7 },
      indirect: { glutes: 0.2, hamstrings: 0.1 },
      support: 'seated',
      positions: ['spine-loaded-bend'],
      wayBack: 'hands-push',
    },
  ];
})();
