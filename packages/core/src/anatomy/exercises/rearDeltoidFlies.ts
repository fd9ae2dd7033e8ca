import type { Exercise } from '../Exercise.ts';
import { band, cableStack, dumbbells, machine } from './loadings.ts';
import { oneArm } from './setUps.ts';

const rearFly = {
  movement: 'rear-deltoid-fly',
  direct: { 'rear-deltoid': 0.6 },
  indirect: { 'mid-back': 0.28, 'external-rotators': 0.12 },
  actions: ['shoulder-horizontal-abduction', 'shoulder-blade-retraction'],
  startsWith: 'lift',
  sides: 'both',
  span: 'isolation',
  hands: 2,
  holds: [
    { at: 'middle', momentArm: 0.85 },
    { at: 'contracted', momentArm: 1 },
  ],
  atFailureAlone: 'leave',
  endurance: 'arm-isolation',
} as const satisfies Partial<Exercise>;

/** Flies for the rear deltoid. */
export const rearDeltoidFlies: readonly Exercise[] = /* @__PURE__ */ (() => {
  return [
    {
      ...rearFly,
      ...dumbbells,
      id: 'dumbbell-rear-deltoid-fly',
      name: 'Bent-over dumbbell fly',
      stations: [],
      support: 'standing',
      positions: ['spine-unsupported-hinge'],
      wayBack: 'legs-push',
      variants: [],
    },
    {
      ...rearFly,
      ...dumbbells,
      id: 'chest-supported-rear-deltoid-fly',
      name: 'Chest-supported rear deltoid fly',
      stations: ['incline-bench'],
      support: 'chest-supported',
      positions: [],
      wayBack: 'partner-only',
      variants: [oneArm],
    },
    {
      ...rearFly,
      ...cableStack,
      id: 'cable-rear-deltoid-fly',
      name: 'Cable rear deltoid fly',
      stations: ['cable'],
      support: 'standing',
      positions: [],
      wayBack: 'legs-push',
      variants: [oneArm],
    },
    {
      ...rearFly,
      ...cableStack,
      id: 'face-pull',
      name: 'Face pull',
      stations: ['cable'],
      direct: { 'rear-deltoid': 0.4, 'mid-back': 0.25 },
      indirect: { 'external-rotators': 0.15, 'lower-traps': 0.1, biceps: 0.05, brachialis: 0.05 },
      actions: [
        'shoulder-horizontal-abduction',
        'shoulder-external-rotation',
        'shoulder-blade-retraction',
        'elbow-flexion',
      ],
      span: 'compound',
      support: 'standing',
      positions: ['shoulder-high-five'],
      wayBack: 'legs-push',
      variants: [
        {
          id: 'to-chin',
          name: 'Pulled to the chin, hands level with the elbows',
          changes: 'elbow-path',
          effect: 'Leaves out the turn to the end of the range.',
          removes: ['shoulder-high-five'],
        },
      ],
    },
    {
      ...rearFly,
      ...machine,
      id: 'machine-rear-deltoid-fly',
      name: 'Reverse fly machine',
      stations: ['fly-machine'],
      support: 'chest-supported',
      positions: [],
      wayBack: 'partner-only',
      variants: [oneArm],
    },
    {
      ...rearFly,
      ...band,
      id: 'band-pull-apart',
      name: 'Band pull-apart',
      stations: [],
      support: 'standing',
      positions: [],
      holds: [{ at: 'contracted', momentArm: 1 }],
      wayBack: 'legs-push',
      variants: [],
    },
  ];
})();
