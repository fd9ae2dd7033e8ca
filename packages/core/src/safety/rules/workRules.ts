import type { CautionRule } from '../CautionRule.ts';
import { limitEnded } from '../limitEnded.ts';
import {
  acsmGuidelines,
  clarkson2006,
  nosaka1996,
  projectConvention,
  rawson2017,
} from '../sources.ts';

/**
 * Hard lowerings for one muscle in a first session: a quarter of the 24 with which the smallest
 * study saw very high readings. A project choice.
 */
const FIRST_HARD_LOWERINGS = 6;

/** What is planned, and who is there. */
export const workRules: readonly CautionRule[] = [
  {
    caution: {
      id: 'first-lowering-heavy-work',
      level: 'caution',
      what: 'Hard lowerings are new, or were last done more than six months ago.',
      why: 'After 24 to 50 unaccustomed maximal lowerings many people showed very high signs of muscle breakdown for days: a quarter of 203 were above 10,000 U/L. A first small dose lowers that for weeks to months.',
      instead:
        'At most six hard lowerings for a muscle in the first session, no second one until the soreness is gone. Dark urine, or swelling and weakness beyond soreness: urgent care.',
      ask: ['coach', 'physician'],
      sources: [clarkson2006, nosaka1996, rawson2017, projectConvention],
    },
    when: (client, context) =>
      context.loweringHeavy === true && client.loweringHeavyWork !== 'accustomed',
    limits: { hardLowerings: FIRST_HARD_LOWERINGS },
    clinicianMayReplace: false,
  },
  {
    caution: {
      id: 'alone',
      level: 'caution',
      what: 'Nobody is there who can help with a load.',
      why: 'A load above the body that cannot be lifted again has to be caught by something. A passer-by is not a plan.',
      instead:
        'Take lifts that can be left at any point, or set stops and try them with the empty bar. No forced repetitions; with a free bar above the body keep one or two repetitions in reserve.',
      ask: [],
      sources: [projectConvention],
    },
    when: (_client, context) => context.alone === true,
    limits: { forcedReps: 'refused' },
    clinicianMayReplace: false,
  },
  {
    caution: {
      id: 'signs-beside-a-complaint',
      level: 'note',
      what: 'Ask whether the pain is there at night, began with an injury, or comes with weakness, numbness, swelling or locking.',
      why: 'Then it is for a clinician to look at before that joint is loaded, and no exchange of exercises replaces that.',
      instead: 'With any of these: physiotherapist or physician first.',
      ask: ['physiotherapist', 'physician'],
      sources: [acsmGuidelines, projectConvention],
    },
    when: (client) => client.complaints?.some(({ redFlags }) => !redFlags?.length) === true,
    clinicianMayReplace: false,
  },
  {
    caution: {
      id: 'clinician-limit-ended',
      level: 'caution',
      what: 'The date that the clinician gave for a limit has passed.',
      why: 'A date says when to look again, not that nothing is left.',
      instead:
        'Ask before going back to what was not allowed, and again at each change of cast, splint or phase.',
      ask: ['physician', 'physiotherapist'],
      sources: [projectConvention],
    },
    when: ({ clinician }, context) => limitEnded(clinician, context),
    clinicianMayReplace: false,
  },
];
