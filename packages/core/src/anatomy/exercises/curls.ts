import type { Exercise } from '../Exercise.ts';
import { anyBar, band, cableStack, dumbbells, machine } from './loadings.ts';
import { oneArm } from './setUps.ts';

const curl = {
  movement: 'curl',
  direct: { biceps: 0.45, brachialis: 0.3 },
  indirect: { brachioradialis: 0.15, grip: 0.1 },
  actions: ['elbow-flexion'],
  stations: [],
  positions: ['elbow-hard-grip'],
  startsWith: 'lift',
  sides: 'both',
  span: 'isolation',
  support: 'standing',
  hands: 2,
  holds: [
    { at: 'stretched', momentArm: 0.3 },
    { at: 'middle', momentArm: 1 },
    { at: 'contracted', momentArm: 0.6 },
  ],
  wayBack: 'legs-push',
  atFailureAlone: 'leave',
  endurance: 'arm-isolation',
} as const satisfies Partial<Exercise>;

const hammerGrip = {
  id: 'hammer-grip',
  name: 'Hammer grip',
  changes: 'grip',
  effect: 'Thumbs up: more brachialis and brachioradialis, less biceps.',
  direct: { brachialis: 0.4, biceps: 0.3 },
  indirect: { brachioradialis: 0.2, grip: 0.1 },
} as const;

/** Curls. */
export const curls: readonly Exercise[] = /* @__PURE__ */ (() => {
  return [
    {
      ...curl,
      ...dumbbells,
      id: 'dumbbell-curl',
      name: 'Dumbbell curl',
      positions: ['elbow-hard-grip', 'spine-upright-load'],
      variants: [hammerGrip, oneArm],
    },
    {
      ...curl,
      ...anyBar,
      id: 'barbell-curl',
      name: 'Barbell curl',
      positions: ['elbow-hard-grip', 'spine-upright-load'],
      variants: [
        {
          id: 'angled-bar',
          name: 'Angled bar',
          changes: 'grip',
          effect: 'Less twist at the wrist.',
        },
      ],
    },
    {
      ...curl,
      ...dumbbells,
      id: 'incline-dumbbell-curl',
      name: 'Incline dumbbell curl',
      stations: ['incline-bench'],
      support: 'seated-with-back',
      wayBack: 'set-down-and-restart',
      variants: [hammerGrip, oneArm],
    },
    {
      ...curl,
      ...dumbbells,
      id: 'concentration-curl',
      name: 'Seated one-arm curl, arm against the thigh',
      stations: ['chair'],
      sides: 'one',
      support: 'seated',
      hands: 1,
      wayBack: 'other-limb',
      variants: [hammerGrip],
    },
    {
      ...curl,
      loads: ['barbell', 'fixed', 'handles'],
      fixedForms: ['barbell', 'dumbbell'],
      eccentricFactor: anyBar.eccentricFactor,
      id: 'preacher-curl',
      name: 'Preacher curl',
      stations: ['preacher-bench'],
      support: 'seated',
      holds: [
        { at: 'stretched', momentArm: 0.9 },
        { at: 'middle', momentArm: 1 },
        { at: 'contracted', momentArm: 0.4 },
      ],
      wayBack: 'partner-only',
      variants: [oneArm],
    },
    {
      ...curl,
      ...cableStack,
      id: 'cable-curl',
      name: 'Cable curl',
      stations: ['cable'],
      holds: [
        { at: 'stretched', momentArm: 0.6 },
        { at: 'middle', momentArm: 1 },
        { at: 'contracted', momentArm: 0.9 },
      ],
      variants: [
        { ...hammerGrip, name: 'Rope, hammer grip' },
        oneArm,
        {
          id: 'wrist-cuffs',
          name: 'With wrist cuffs',
          changes: 'grip',
          effect: 'The cuffs pull at the wrist, so that the hands need not grip.',
          removes: ['elbow-hard-grip'],
        },
      ],
    },
    {
      ...curl,
      ...machine,
      id: 'machine-curl',
      name: 'Curl machine',
      stations: ['curl-machine'],
      support: 'seated',
      holds: [
        { at: 'stretched', momentArm: 0.9 },
        { at: 'middle', momentArm: 1 },
        { at: 'contracted', momentArm: 0.9 },
      ],
      wayBack: 'partner-only',
      variants: [oneArm],
    },
    {
      ...curl,
      ...band,
      id: 'band-curl',
      name: 'Band curl',
      holds: [{ at: 'contracted', momentArm: 1 }],
      variants: [hammerGrip, oneArm],
    },
    {
      ...curl,
      ...anyBar,
      id: 'reverse-curl',
      name: 'Reverse curl',
      direct: { brachialis: 0.35, brachioradialis: 0.3 },
      indirect: { biceps: 0.15, 'wrist-extensors': 0.15, grip: 0.05 },
      actions: ['elbow-flexion', 'wrist-extension'],
      positions: ['elbow-hard-grip', 'elbow-palms-down-pull', 'spine-upright-load'],
      variants: [],
    },
  ];
})();
