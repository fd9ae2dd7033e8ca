import type { Exercise } from '../Exercise.ts';
import { barbell, dumbbellsOrKettlebells, ownBody, plateMachine } from './loadings.ts';
import { shortRangeLegs, withStraps } from './setUps.ts';

const lean = {
  id: 'leaning-forward',
  name: 'Trunk leaning forward, shin upright',
  changes: 'lean',
  effect: 'More glutes, less vasti.',
  direct: { glutes: 0.4, vasti: 0.28 },
  indirect: { 'hip-abductors': 0.13, 'adductor-magnus': 0.15, soleus: 0.04 },
} as const;

/** Split squats and lunges. */
export const splitSquats: readonly Exercise[] = /* @__PURE__ */ (() => {
  const split = {
    movement: 'split-squat',
    direct: { vasti: 0.4, glutes: 0.3 },
    indirect: { 'hip-abductors': 0.13, 'adductor-magnus': 0.13, soleus: 0.04 },
    actions: ['knee-extension', 'hip-extension', 'hip-abduction'],
    stations: [],
    positions: ['spine-upright-load', 'hip-wide-split', 'hip-deep-bend', 'knee-bent-past-60'],
    startsWith: 'lower',
    sides: 'one',
    span: 'compound',
    support: 'standing',
    hands: 2,
    holds: [
      { at: 'stretched', momentArm: 1 },
      { at: 'middle', momentArm: 0.9 },
    ],
    wayBack: 'other-limb',
    atFailureAlone: 'leave',
    endurance: 'squat',
    variants: [{ ...shortRangeLegs, name: 'To a raised pad' }],
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...split,
      ...dumbbellsOrKettlebells,
      id: 'dumbbell-split-squat',
      name: 'Dumbbell split squat',
      positions: [...split.positions, 'elbow-hard-grip'],
      variants: [...split.variants, lean, withStraps],
    },
    {
      ...split,
      ...dumbbellsOrKettlebells,
      id: 'rear-foot-raised-split-squat',
      name: 'Split squat with the rear foot raised',
      stations: ['flat-bench'],
      positions: [...split.positions, 'elbow-hard-grip'],
      variants: [...split.variants, lean, withStraps],
    },
    {
      ...split,
      ...barbell,
      id: 'barbell-split-squat',
      name: 'Barbell split squat',
      stations: ['rack'],
      positions: [...split.positions, 'shoulder-high-five'],
      atFailureAlone: 'needs-stops',
    },
    {
      ...split,
      ...plateMachine,
      id: 'guided-bar-split-squat',
      name: 'Guided-bar split squat',
      stations: ['guided-bar'],
      positions: [...split.positions, 'shoulder-high-five'],
      atFailureAlone: 'needs-stops',
    },
    {
      ...split,
      ...ownBody,
      id: 'body-weight-split-squat',
      name: 'Split squat without weight',
      hands: 0,
      positions: ['hip-wide-split', 'hip-deep-bend', 'knee-bent-past-60'],
      movedShare: { low: 0.6, high: 0.9 },
    },
    {
      ...split,
      ...dumbbellsOrKettlebells,
      id: 'dumbbell-reverse-lunge',
      name: 'Dumbbell reverse lunge',
      positions: [...split.positions, 'elbow-hard-grip'],
      variants: [...split.variants, withStraps],
    },
    {
      ...split,
      ...barbell,
      id: 'barbell-reverse-lunge',
      name: 'Barbell reverse lunge',
      stations: ['rack'],
      positions: [...split.positions, 'shoulder-high-five'],
      atFailureAlone: 'needs-stops',
    },
    {
      ...split,
      ...dumbbellsOrKettlebells,
      id: 'walking-lunge',
      name: 'Dumbbell walking lunge',
      positions: [...split.positions, 'elbow-hard-grip'],
      variants: [withStraps],
    },
  ];
})();

/** Step-ups. */
export const stepUps: readonly Exercise[] = /* @__PURE__ */ (() => {
  const split = {
    movement: 'split-squat',
    direct: { vasti: 0.4, glutes: 0.3 },
    indirect: { 'hip-abductors': 0.13, 'adductor-magnus': 0.13, soleus: 0.04 },
    actions: ['knee-extension', 'hip-extension', 'hip-abduction'],
    stations: [],
    positions: ['spine-upright-load', 'hip-wide-split', 'hip-deep-bend', 'knee-bent-past-60'],
    startsWith: 'lower',
    sides: 'one',
    span: 'compound',
    support: 'standing',
    hands: 2,
    holds: [
      { at: 'stretched', momentArm: 1 },
      { at: 'middle', momentArm: 0.9 },
    ],
    wayBack: 'other-limb',
    atFailureAlone: 'leave',
    endurance: 'squat',
    variants: [{ ...shortRangeLegs, name: 'To a raised pad' }],
  } as const satisfies Partial<Exercise>;

  const stepUp = {
    ...split,
    movement: 'step-up',
    stations: ['step'],
    positions: ['spine-upright-load', 'knee-bent-past-60'],
    startsWith: 'lift',
    holds: [{ at: 'middle', momentArm: 0.9 }],
    variants: [
      {
        id: 'low-step',
        name: 'On a low step',
        changes: 'range',
        effect: 'Less bend of hip and knee.',
        removes: ['knee-bent-past-60'],
      },
    ],
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...stepUp,
      ...dumbbellsOrKettlebells,
      id: 'dumbbell-step-up',
      name: 'Dumbbell step-up',
      positions: [...stepUp.positions, 'elbow-hard-grip'],
    },
    {
      ...stepUp,
      ...barbell,
      id: 'barbell-step-up',
      name: 'Barbell step-up',
      stations: ['step', 'rack'],
      positions: [...stepUp.positions, 'shoulder-high-five'],
      atFailureAlone: 'needs-partner',
    },
    {
      ...stepUp,
      ...ownBody,
      id: 'body-weight-step-up',
      name: 'Step-up without weight',
      hands: 0,
      positions: ['knee-bent-past-60'],
      movedShare: { low: 0.94, high: 0.94 },
    },
  ];
})();
