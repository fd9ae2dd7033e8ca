import type { JointId, PositionId } from '../../anatomy/index.ts';
import type { Caution } from '../Caution.ts';
import type { ComplaintId } from '../ClientHealth.ts';
import {
  kolber2013,
  kolber2014,
  lamontagne2009,
  lucado2022,
  powers2014,
  projectConvention,
  saraceni2020,
} from '../sources.ts';

/** What a joint complaint asks of exercise choice, in people who may train. Pain overrides all of it. */
export interface ComplaintRule {
  readonly complaint: ComplaintId;
  readonly joint: JointId;
  readonly caution: Caution;
  /** Not loaded in these positions. */
  readonly avoid: readonly PositionId[];
  /** Less load or range in these, and only if it does not hurt. */
  readonly ease: readonly PositionId[];
  /** A plan for this joint is made only with a clinician in charge. */
  readonly needsClinician?: boolean;
}

/** One row a complaint. */
export const complaintRules: readonly ComplaintRule[] = [
  {
    complaint: 'shoulder-front-bottom-of-press',
    joint: 'shoulder',
    caution: {
      id: 'shoulder-front-bottom-of-press',
      level: 'caution',
      what: 'The front of the shoulder hurts in the lowest part of a press.',
      why: 'There the upper arm is behind the trunk under load.',
      instead:
        'Shorten the bottom, let the arms turn, or both: press from the floor, with palms facing each other, or to a stop just above the painful point, lighter than before. No dips, deep flyes or wide flared pressing.',
      ask: ['physiotherapist', 'physician'],
      sources: [kolber2013, projectConvention],
    },
    avoid: ['shoulder-behind-trunk', 'shoulder-flared-press', 'shoulder-high-five'],
    ease: ['shoulder-overhead'],
  },
  {
    complaint: 'shoulder-slips-or-unstable',
    joint: 'shoulder',
    caution: {
      id: 'shoulder-slips-or-unstable',
      level: 'caution',
      what: 'The shoulder feels loose or slips.',
      why: 'Behind-the-neck pulldowns and presses went with signs of instability in lifters. That they go together was seen, not that one causes the other.',
      instead:
        'Keep the elbows in front of the trunk: pulldown to the front, press in the plane of the shoulder blade, work for the muscles that turn the arm out.',
      ask: ['physiotherapist', 'physician'],
      sources: [kolber2013, projectConvention],
    },
    avoid: ['shoulder-high-five', 'shoulder-behind-trunk'],
    ease: ['shoulder-hanging', 'shoulder-overhead', 'shoulder-flared-press'],
  },
  {
    complaint: 'shoulder-raising-the-arm',
    joint: 'shoulder',
    caution: {
      id: 'shoulder-raising-the-arm',
      level: 'caution',
      what: 'The shoulder hurts when the arm is raised.',
      why: 'Lateral raises and upright rows above 90 degrees went with signs of impingement in lifters. That they go together was seen, not that one causes the other.',
      instead:
        'Raise below 90 degrees, or a little in front of the side with the thumb up; work for the muscles that turn the arm out.',
      ask: ['physiotherapist', 'physician'],
      sources: [kolber2014],
    },
    avoid: ['shoulder-raised-turned-in', 'shoulder-high-five'],
    ease: ['shoulder-overhead', 'shoulder-hanging'],
  },
  {
    complaint: 'elbow-outer',
    joint: 'elbow',
    caution: {
      id: 'elbow-outer',
      level: 'caution',
      what: 'The outer side of the elbow hurts.',
      why: 'Gripping hard loads the muscles that begin there, most with the palm down and the elbow straight.',
      instead:
        'Palms facing each other or up, straps for heavy pulls, less grip work while it is easily irritated, then graded loading of the wrist extensors.',
      ask: ['physiotherapist', 'physician'],
      sources: [lucado2022, projectConvention],
    },
    avoid: ['elbow-palms-down-pull'],
    ease: ['elbow-hard-grip'],
  },
  {
    complaint: 'elbow-back-or-inner',
    joint: 'elbow',
    caution: {
      id: 'elbow-back-or-inner',
      level: 'caution',
      what: 'The back or inner side of the elbow hurts.',
      why: 'A deep bend under load stretches and presses on what runs behind and inside the elbow.',
      instead:
        'Elbow extension with less bend and hands that can turn: rope pushdown, close press with palms facing each other; lighter, more repetitions. No lying or overhead extension with a deep bend.',
      ask: ['physiotherapist', 'physician'],
      sources: [projectConvention],
    },
    avoid: ['elbow-deep-bend'],
    ease: ['elbow-hard-grip'],
  },
  {
    complaint: 'wrist',
    joint: 'wrist',
    caution: {
      id: 'wrist',
      level: 'caution',
      what: 'The wrist hurts.',
      why: 'It carries load bent back in presses from the floor and in the front rack.',
      instead:
        'Handles that keep the wrist straight, machines with pads on the arm, straps for pulls.',
      ask: ['physiotherapist', 'physician'],
      sources: [projectConvention],
    },
    avoid: ['wrist-bent-back'],
    ease: ['elbow-hard-grip'],
  },
  {
    complaint: 'low-back',
    joint: 'spine',
    caution: {
      id: 'low-back',
      level: 'caution',
      what: 'The low back hurts.',
      why: 'It differs from person to person. Bending the back while lifting was not linked to back pain in pooled studies (low quality), so there is no blanket ban.',
      instead:
        'Less load and range on the lifts that bring it on, supported versions, and keep moving.',
      ask: ['physiotherapist', 'physician'],
      sources: [saraceni2020, projectConvention],
    },
    avoid: [],
    ease: [
      'spine-unsupported-hinge',
      'spine-upright-load',
      'spine-seated-load',
      'spine-loaded-bend',
      'spine-loaded-twist',
    ],
  },
  {
    complaint: 'hip-front-deep-bend',
    joint: 'hip',
    caution: {
      id: 'hip-front-deep-bend',
      level: 'caution',
      what: 'The front of the hip hurts when it is bent deep.',
      why: 'Deep bending with the knee turned in is what brings it on; people with one known hip shape squatted less deep than others.',
      instead:
        'Less depth, a wider stance, squats to a box, hinges in the range that does not hurt.',
      ask: ['physiotherapist', 'physician'],
      sources: [lamontagne2009, projectConvention],
    },
    avoid: ['hip-deep-bend'],
    ease: ['hip-wide-split'],
  },
  {
    complaint: 'knee-front',
    joint: 'knee',
    caution: {
      id: 'knee-front',
      level: 'caution',
      what: 'The front of the knee hurts.',
      why: 'Modelled stress behind the kneecap grows with the bend in squats and presses, and toward the straight knee in leg extension. The model used healthy people.',
      instead:
        'Squat and leg press from 0 to 45 degrees first; leg extension from 90 to 45 degrees; hip work besides. Harder by one leg, slower lowering, pauses or more repetitions, not by deeper bend.',
      ask: ['physiotherapist', 'physician'],
      sources: [powers2014, projectConvention],
    },
    avoid: ['knee-bent-past-60', 'knee-straightened-against-load'],
    ease: ['knee-kneeling'],
  },
  {
    complaint: 'knee-tendon-front',
    joint: 'knee',
    caution: {
      id: 'knee-tendon-front',
      level: 'caution',
      what: 'A plan for the tendon below the kneecap is asked for.',
      why: 'Heavy slow programmes for this tendon are treatment: which knee they suit, and how much pain is allowed, is a clinician’s decision.',
      instead:
        'A dated programme only with a clinician in charge, who sets the pain limit of 0 to 10; above it a step is repeated or undone.',
      ask: ['physiotherapist', 'physician'],
      sources: [projectConvention],
    },
    avoid: [],
    ease: ['knee-bent-past-60', 'knee-straightened-against-load'],
    needsClinician: true,
  },
  {
    complaint: 'ankle',
    joint: 'ankle',
    caution: {
      id: 'ankle',
      level: 'caution',
      what: 'The ankle hurts or does not bend far.',
      why: 'Deep squats and calf raises from a step load it at the end of its bend.',
      instead: 'Heels raised or less depth in squats; calf raises from the flat foot up.',
      ask: ['physiotherapist', 'physician'],
      sources: [projectConvention],
    },
    avoid: ['ankle-deep-bend'],
    ease: [],
  },
];
