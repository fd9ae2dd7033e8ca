import type { Exercise } from '../Exercise.ts';
import { barbell, dumbbells, machine, onePost, ownBody, plateMachine } from './loadings.ts';
import { elbowsIn, oneArm, palmsFacingToStop, pressToStop } from './setUps.ts';

const press = {
  movement: 'incline-press',
  direct: { 'upper-chest': 0.32, 'front-deltoid': 0.28 },
  indirect: {
    chest: 0.15,
    'triceps-short-heads': 0.13,
    'triceps-long-head': 0.07,
    serratus: 0.05,
  },
  actions: [
    'shoulder-flexion',
    'shoulder-horizontal-adduction',
    'elbow-extension',
    'shoulder-blade-upward-rotation',
  ],
  startsWith: 'lower',
  sides: 'both',
  span: 'compound',
  hands: 2,
  holds: [
    { at: 'stretched', momentArm: 1 },
    { at: 'middle', momentArm: 0.9 },
  ],
  endurance: 'press',
} as const satisfies Partial<Exercise>;

/** Incline presses. */
export const inclinePresses: readonly Exercise[] = /* @__PURE__ */ (() => {
  const onTheBench = {
    ...press,
    stations: ['incline-bench'],
    support: 'seated-with-back',
    positions: ['shoulder-behind-trunk', 'shoulder-flared-press'],
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...onTheBench,
      ...barbell,
      id: 'incline-barbell-press',
      name: 'Incline barbell press',
      stations: ['incline-bench', 'rack'],
      wayBack: 'partner-only',
      atFailureAlone: 'needs-stops',
      variants: [elbowsIn, pressToStop],
    },
    {
      ...onTheBench,
      ...dumbbells,
      id: 'incline-dumbbell-press',
      name: 'Incline dumbbell press',
      wayBack: 'set-down-and-restart',
      atFailureAlone: 'leave',
      variants: [palmsFacingToStop, elbowsIn, oneArm],
    },
    {
      ...onTheBench,
      ...plateMachine,
      id: 'guided-bar-incline-press',
      name: 'Guided-bar incline press',
      stations: ['incline-bench', 'guided-bar'],
      wayBack: 'partner-only',
      atFailureAlone: 'needs-stops',
      variants: [elbowsIn, pressToStop],
    },
    {
      ...press,
      ...machine,
      id: 'machine-incline-press',
      name: 'Incline press machine',
      stations: ['incline-press-machine'],
      support: 'seated-with-back',
      positions: ['shoulder-behind-trunk', 'shoulder-flared-press'],
      wayBack: 'legs-push',
      atFailureAlone: 'leave',
      variants: [
        {
          ...palmsFacingToStop,
          name: 'Inner handles, start set forward',
          changes: 'seat',
          effect: 'The start pin keeps the upper arm level with the trunk, and the elbows stay in.',
        },
        oneArm,
      ],
    },
    {
      ...press,
      ...onePost,
      id: 'landmine-press',
      name: 'Landmine press',
      stations: ['landmine'],
      sides: 'one',
      support: 'standing',
      hands: 1,
      positions: ['spine-upright-load'],
      wayBack: 'other-limb',
      atFailureAlone: 'leave',
      variants: [
        {
          id: 'half-kneeling',
          name: 'Half-kneeling',
          changes: 'support',
          effect: 'The trunk is easier to keep still.',
          adds: ['knee-kneeling'],
          support: 'kneeling',
        },
      ],
    },
    {
      ...press,
      ...ownBody,
      id: 'feet-raised-push-up',
      name: 'Push-up with feet raised',
      stations: ['flat-bench'],
      support: 'hands-and-feet',
      positions: ['shoulder-behind-trunk', 'wrist-bent-back'],
      movedShare: { low: 0.7, high: 0.8 },
      wayBack: 'legs-push',
      atFailureAlone: 'leave',
      variants: [
        {
          ...pressToStop,
          name: 'Down to a pad',
          effect: 'The pad stops the upper arm at trunk level.',
        },
        {
          id: 'handles',
          name: 'On handles or dumbbells',
          changes: 'grip',
          effect: 'The wrist stays straight.',
          removes: ['wrist-bent-back'],
        },
      ],
    },
  ];
})();
