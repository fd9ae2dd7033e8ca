import type { Variant } from '../Exercise.ts';

/** Set-ups that many exercises share. */
export const withStraps: Variant = {
  id: 'straps',
  name: 'With straps',
  changes: 'straps',
  effect: 'The hands hold on less hard, so that the grip is not what fails.',
  removes: ['elbow-hard-grip'],
};

export const oneArm: Variant = {
  id: 'one-arm',
  name: 'One arm at a time',
  changes: 'one-side',
  effect: 'One hand works and the other is free to help it back; about half the load.',
  hands: 1,
  wayBack: 'other-limb',
};

export const oneLeg: Variant = {
  id: 'one-leg',
  name: 'One leg at a time',
  changes: 'one-side',
  effect: 'One leg works and both bring it back up; about half the load.',
  wayBack: 'both-limbs',
};

export const palmsFacing: Variant = {
  id: 'neutral-grip',
  name: 'Palms facing each other',
  changes: 'grip',
  effect: 'Less twist at elbow and wrist, and the elbows stay nearer the trunk.',
  removes: ['elbow-palms-down-pull'],
};

export const palmsUp: Variant = {
  id: 'palms-up',
  name: 'Palms-up grip',
  changes: 'grip',
  effect: 'More biceps, elbows nearer the trunk; takes the palms-down pull off the outer elbow.',
  removes: ['elbow-palms-down-pull'],
};

/** Squats and presses of the legs, stopped early. */
export const shortRangeLegs: Variant = {
  id: 'short-range',
  name: 'Stopped high, about 45 degrees',
  changes: 'range',
  effect: 'Stops above the deep bend of hip, knee and ankle; a box, pad or stop marks the point.',
  removes: ['hip-deep-bend', 'knee-bent-past-60', 'ankle-deep-bend'],
};

/** Presses stopped before the upper arm passes the trunk. */
export const pressToStop: Variant = {
  id: 'to-stop',
  name: 'To a stop at trunk level',
  changes: 'range',
  effect: 'Turns round just before the upper arm goes behind the trunk.',
  removes: ['shoulder-behind-trunk'],
};

export const elbowsIn: Variant = {
  id: 'elbows-in',
  name: 'Elbows about 45 degrees from the trunk',
  changes: 'elbow-path',
  effect: 'A little more triceps, less stretch at the front of the shoulder.',
  removes: ['shoulder-flared-press'],
};

/** Palms facing, elbows in, and turned round at trunk level. */
export const palmsFacingToStop: Variant = {
  id: 'neutral-grip-to-stop',
  name: 'Palms facing each other, to a stop at trunk level',
  changes: 'grip',
  effect: 'The arms can turn, and the upper arm does not go behind the trunk.',
  removes: ['shoulder-behind-trunk', 'shoulder-flared-press'],
};

export const raiseBelowShoulder: Variant = {
  id: 'below-shoulder-height',
  name: 'Below shoulder height, thumb up',
  changes: 'range',
  effect: 'Stays under 90 degrees, a little in front of the side.',
  removes: ['shoulder-raised-turned-in'],
};

export const fromFlatFoot: Variant = {
  id: 'from-floor',
  name: 'From the flat foot up',
  changes: 'range',
  effect: 'Leaves out the deep stretch of the ankle.',
  removes: ['ankle-deep-bend'],
};
