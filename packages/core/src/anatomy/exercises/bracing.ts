import type { Exercise } from '../Exercise.ts';
import { barbell, cableStack, dumbbellsOrKettlebells, ownBody } from './loadings.ts';
import { withStraps } from './setUps.ts';
import { trunk } from './trunkBase.ts';

/** Keeping the trunk still against a load. */
export const bracing: readonly Exercise[] = /* @__PURE__ */ (() => {
  const brace = {
    ...trunk,
    movement: 'trunk-bracing',
    direct: { abdominals: 0.5, obliques: 0.3 },
    indirect: { 'hip-flexors': 0.12, serratus: 0.08 },
    actions: ['spine-flexion'],
    span: 'compound',
    holds: [{ at: 'middle', momentArm: 1 }],
    timed: true,
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...brace,
      ...ownBody,
      id: 'plank',
      name: 'Plank',
      support: 'hands-and-feet',
      hands: 2,
      movedShare: { low: 0.5, high: 0.65 },
      variants: [
        {
          id: 'knees',
          name: 'On the knees',
          changes: 'support',
          effect: 'A shorter lever: less to hold.',
          movedShare: { low: 0.4, high: 0.5 },
          adds: ['knee-kneeling'],
        },
      ],
    },
    {
      ...brace,
      ...ownBody,
      id: 'lying-heel-tap',
      name: 'Lying brace, legs lowered in turn',
      timed: true,
      support: 'lying',
      movedShare: { low: 0.16, high: 0.32 },
    },
    {
      ...brace,
      ...cableStack,
      id: 'cable-anti-rotation-press',
      name: 'Cable press-out against rotation',
      stations: ['cable'],
      direct: { obliques: 0.65 },
      indirect: { abdominals: 0.2, 'hip-abductors': 0.15 },
      actions: ['spine-rotation'],
      sides: 'one',
      support: 'standing',
      hands: 2,
      wayBack: 'legs-push',
    },
  ];
})();

/** Carries. */
export const carries: readonly Exercise[] = /* @__PURE__ */ (() => {
  const carry = {
    ...trunk,
    movement: 'carry',
    direct: { grip: 0.35, 'upper-traps': 0.2, obliques: 0.15 },
    indirect: { 'spinal-erectors': 0.12, 'hip-abductors': 0.1, soleus: 0.08 },
    actions: ['finger-flexion', 'shoulder-blade-elevation', 'spine-side-flexion'],
    positions: ['spine-upright-load', 'elbow-hard-grip'],
    span: 'compound',
    support: 'standing',
    hands: 2,
    holds: [{ at: 'middle', momentArm: 1 }],
    wayBack: 'set-down-and-restart',
    timed: true,
    variants: [withStraps],
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...carry,
      ...dumbbellsOrKettlebells,
      id: 'farmer-carry',
      name: 'Farmer carry',
    },
    {
      ...carry,
      ...dumbbellsOrKettlebells,
      id: 'one-hand-carry',
      name: 'One-hand carry',
      direct: { grip: 0.3, obliques: 0.35 },
      indirect: { 'upper-traps': 0.12, 'spinal-erectors': 0.13, 'hip-abductors': 0.1 },
      sides: 'one',
      hands: 1,
    },
    {
      ...carry,
      ...barbell,
      id: 'trap-bar-carry',
      name: 'Trap-bar carry',
      stations: ['trap-bar'],
    },
  ];
})();
