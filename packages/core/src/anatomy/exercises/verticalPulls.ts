import type { Exercise } from '../Exercise.ts';
import { band, cableStack, machine, ownBody } from './loadings.ts';
import { oneArm, palmsFacing, palmsUp, withStraps } from './setUps.ts';

const pull = {
  movement: 'vertical-pull',
  direct: { lats: 0.42, 'teres-major': 0.13 },
  indirect: {
    biceps: 0.1,
    brachialis: 0.09,
    brachioradialis: 0.04,
    'lower-traps': 0.08,
    'rear-deltoid': 0.05,
    'mid-back': 0.04,
    grip: 0.05,
  },
  actions: [
    'shoulder-adduction',
    'shoulder-extension',
    'shoulder-blade-depression',
    'elbow-flexion',
  ],
  startsWith: 'lift',
  sides: 'both',
  span: 'compound',
  hands: 2,
  holds: [
    { at: 'stretched', momentArm: 0.5 },
    { at: 'middle', momentArm: 0.95 },
    { at: 'contracted', momentArm: 1 },
  ],
  atFailureAlone: 'leave',
  endurance: 'pull',
} as const satisfies Partial<Exercise>;

const moreBiceps = {
  direct: { lats: 0.4, 'teres-major': 0.12 },
  indirect: {
    biceps: 0.14,
    brachialis: 0.1,
    brachioradialis: 0.05,
    'lower-traps': 0.07,
    'rear-deltoid': 0.04,
    'mid-back': 0.04,
    grip: 0.04,
  },
} as const;

const behindNeck = {
  id: 'behind-neck',
  name: 'Behind the neck',
  changes: 'elbow-path',
  effect: 'Takes the upper arm out and turned back to the end of its range.',
  adds: ['shoulder-high-five'],
} as const;

/** Chin-ups and pulldowns. */
export const verticalPulls: readonly Exercise[] = /* @__PURE__ */ (() => {
  const chinUp = {
    ...pull,
    ...ownBody,
    ...moreBiceps,
    movedShare: { low: 1, high: 1 },
    wayBack: 'step-up',
    variants: [
      {
        id: 'neutral-grip',
        name: 'Palms facing each other',
        changes: 'grip',
        effect: 'Less twist at elbow and wrist.',
      },
      {
        id: 'palms-down',
        name: 'Palms-down grip (pull-up)',
        changes: 'grip',
        effect: 'Less biceps, more lats and lower traps.',
        adds: ['elbow-palms-down-pull'],
        direct: pull.direct,
        indirect: pull.indirect,
      },
    ],
  } as const satisfies Partial<Exercise>;

  return [
    {
      ...chinUp,
      id: 'chin-up',
      name: 'Chin-up',
      stations: ['chin-up-bar'],
      support: 'hanging',
      positions: ['shoulder-overhead', 'shoulder-hanging', 'elbow-hard-grip'],
    },
    {
      ...chinUp,
      id: 'assisted-chin-up',
      name: 'Assisted chin-up',
      stations: ['assisted-chin-dip-machine'],
      support: 'kneeling',
      positions: ['shoulder-overhead', 'shoulder-hanging', 'elbow-hard-grip', 'knee-kneeling'],
    },
    {
      ...pull,
      ...cableStack,
      id: 'cable-pulldown',
      name: 'Cable pulldown',
      stations: ['high-pulley'],
      support: 'seated',
      positions: ['shoulder-overhead', 'elbow-palms-down-pull', 'elbow-hard-grip'],
      wayBack: 'partner-only',
      variants: [{ ...palmsUp, ...moreBiceps }, palmsFacing, oneArm, withStraps, behindNeck],
    },
    {
      ...pull,
      ...machine,
      id: 'machine-pulldown',
      name: 'Pulldown machine',
      stations: ['pulldown-machine'],
      support: 'seated',
      positions: ['shoulder-overhead', 'elbow-hard-grip'],
      wayBack: 'partner-only',
      variants: [
        {
          id: 'palms-up',
          name: 'Palms-up grip',
          changes: 'grip',
          effect: 'More biceps, elbows nearer the trunk.',
          ...moreBiceps,
        },
        oneArm,
        withStraps,
      ],
    },
    {
      ...pull,
      ...band,
      id: 'band-pulldown',
      name: 'Band pulldown',
      stations: ['chin-up-bar'],
      support: 'kneeling',
      positions: ['shoulder-overhead', 'elbow-palms-down-pull', 'elbow-hard-grip', 'knee-kneeling'],
      holds: [{ at: 'contracted', momentArm: 1 }],
      wayBack: 'legs-push',
      variants: [palmsFacing, oneArm],
    },
  ];
})();
