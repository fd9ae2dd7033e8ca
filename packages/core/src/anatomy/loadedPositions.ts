import type { LoadedPosition } from './Joint.ts';

/** Positions under load that limits refer to, from the shoulders down. */
export const loadedPositions: readonly LoadedPosition[] = [
  {
    id: 'shoulder-behind-trunk',
    joint: 'shoulder',
    what: 'the upper arm behind the trunk under load',
  },
  {
    id: 'shoulder-flared-press',
    joint: 'shoulder',
    what: 'a press with the elbows wide',
  },
  {
    id: 'shoulder-high-five',
    joint: 'shoulder',
    what: 'the arm out to the side and turned back to the end of its range',
  },
  {
    id: 'shoulder-raised-turned-in',
    joint: 'shoulder',
    what: 'the arm raised above 90 degrees while turned in',
  },
  { id: 'shoulder-overhead', joint: 'shoulder', what: 'load with the arm overhead' },
  { id: 'shoulder-hanging', joint: 'shoulder', what: 'the body hanging from the arm' },
  { id: 'elbow-deep-bend', joint: 'elbow', what: 'a deep bend of the elbow under load' },
  {
    id: 'elbow-palms-down-pull',
    joint: 'elbow',
    what: 'a heavy pull with the palms down',
  },
  { id: 'elbow-hard-grip', joint: 'elbow', what: 'a hard grip' },
  { id: 'wrist-bent-back', joint: 'wrist', what: 'the wrist bent back under load' },
  {
    id: 'spine-upright-load',
    joint: 'spine',
    what: 'load along the spine while standing',
  },
  { id: 'spine-seated-load', joint: 'spine', what: 'load along the spine while seated' },
  {
    id: 'spine-unsupported-hinge',
    joint: 'spine',
    what: 'the trunk leaning forward without support under load',
  },
  { id: 'spine-loaded-bend', joint: 'spine', what: 'the spine bending under load' },
  { id: 'spine-loaded-twist', joint: 'spine', what: 'the spine turning under load' },
  { id: 'hip-deep-bend', joint: 'hip', what: 'a deep bend of the hip under load' },
  { id: 'hip-wide-split', joint: 'hip', what: 'one hip bent and the other stretched back' },
  {
    id: 'knee-bent-past-60',
    joint: 'knee',
    what: 'the knee bent past 60 degrees under load',
  },
  {
    id: 'knee-straightened-against-load',
    joint: 'knee',
    what: 'the last 30 degrees of straightening the knee against a load on the shin',
  },
  { id: 'knee-kneeling', joint: 'knee', what: 'weight on the kneecap' },
  {
    id: 'ankle-deep-bend',
    joint: 'ankle',
    what: 'the ankle at the end of its bend under load',
  },
];
