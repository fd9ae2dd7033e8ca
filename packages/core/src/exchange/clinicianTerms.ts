import type { ClinicianTerm } from './Exchange.ts';

/**
 * Words as clinicians write them, and what they cover. Families are read widely: what is not meant
 * is lost for a while, what is meant is never offered. A choice of this project.
 */
export const clinicianTerms: readonly ClinicianTerm[] = [
  {
    says: ['squat', 'knee bend'],
    movements: ['squat', 'split-squat', 'step-up'],
    about: ['spine-upright-load', 'knee-bent-past-60', 'hip-deep-bend'],
  },
  {
    says: ['lunge', 'split squat', 'step-up', 'step up'],
    movements: ['split-squat', 'step-up'],
    about: ['knee-bent-past-60', 'hip-wide-split'],
  },
  {
    says: ['deadlift', 'dead lift', 'hip hinge', 'good morning', 'swing', 'kettlebell swing'],
    movements: ['hip-hinge'],
    about: ['spine-unsupported-hinge', 'spine-upright-load'],
  },
  {
    says: ['clean', 'power clean', 'snatch', 'jerk', 'olympic lift'],
    ids: ['power-clean', 'push-press', 'kettlebell-swing'],
    about: ['spine-unsupported-hinge', 'spine-upright-load'],
  },
  {
    says: ['shrug'],
    movements: ['shrug'],
    about: ['spine-upright-load'],
  },
  {
    says: ['carry', 'farmer carry', 'loaded walk'],
    movements: ['carry'],
    about: ['spine-upright-load'],
  },
  {
    says: ['bent-over row', 'bent over row', 't-bar row'],
    movements: ['horizontal-row', 'rear-deltoid-fly'],
    position: 'spine-unsupported-hinge',
    about: ['spine-unsupported-hinge'],
  },
  { says: ['row', 'rowing'], movements: ['horizontal-row'], about: [] },
  { says: ['upright row'], movements: ['upright-row'], about: ['shoulder-raised-turned-in'] },
  {
    says: [
      'overhead press',
      'shoulder press',
      'military press',
      'seated overhead press',
      'standing overhead press',
      'push press',
    ],
    movements: ['vertical-press'],
    about: ['shoulder-overhead', 'spine-seated-load'],
  },
  {
    says: ['overhead work', 'overhead'],
    movements: ['vertical-press', 'vertical-pull'],
    ids: [
      'overhead-cable-triceps-extension',
      'overhead-dumbbell-triceps-extension',
      'dumbbell-pullover',
      'machine-pullover',
      'straight-arm-cable-pulldown',
      'chest-supported-y-raise',
      'hanging-knee-raise',
    ],
    about: ['shoulder-overhead'],
  },
  {
    says: ['bench press', 'chest press', 'press-up', 'push-up', 'push up', 'press'],
    movements: ['horizontal-press', 'incline-press'],
    about: ['shoulder-behind-trunk'],
  },
  { says: ['dip'], movements: ['dip'], about: ['shoulder-behind-trunk', 'elbow-deep-bend'] },
  {
    says: ['fly', 'flye', 'chest fly'],
    movements: ['chest-fly'],
    about: ['shoulder-behind-trunk'],
  },
  {
    says: ['chin-up', 'chin up', 'pull-up', 'pull up', 'pulldown', 'pull-down'],
    movements: ['vertical-pull'],
    about: ['shoulder-overhead'],
  },
  {
    says: ['lateral raise', 'side raise'],
    movements: ['lateral-raise'],
    about: ['shoulder-raised-turned-in'],
  },
  { says: ['curl', 'biceps curl'], movements: ['curl'], about: ['elbow-hard-grip'] },
  {
    says: ['triceps extension', 'lying triceps extension', 'overhead triceps extension'],
    movements: ['triceps-extension'],
    about: ['elbow-deep-bend'],
  },
  {
    says: ['leg press'],
    movements: ['leg-press'],
    about: ['knee-bent-past-60', 'hip-deep-bend'],
  },
  {
    says: ['leg extension', 'knee extension'],
    movements: ['knee-extension'],
    about: ['knee-straightened-against-load'],
  },
  { says: ['leg curl', 'hamstring curl'], movements: ['leg-curl'], about: [] },
  { says: ['calf raise'], movements: ['calf-raise'], about: ['ankle-deep-bend'] },
  { says: ['hip thrust', 'bridge', 'glute bridge'], movements: ['hip-thrust'], about: [] },
  {
    says: ['crunch', 'sit-up', 'sit up'],
    movements: ['trunk-flexion'],
    about: ['spine-loaded-bend'],
  },
  {
    says: ['back extension'],
    movements: ['trunk-extension'],
    about: ['spine-loaded-bend', 'spine-unsupported-hinge'],
  },
  {
    says: ['twist', 'trunk rotation', 'rotation'],
    movements: ['trunk-rotation'],
    about: ['spine-loaded-twist'],
  },
  { says: ['plank'], movements: ['trunk-bracing'], ids: ['side-plank'], about: [] },
];
