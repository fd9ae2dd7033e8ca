import type { Caution } from '../Caution.ts';
import type { RedFlagId } from '../ClientHealth.ts';
import { acsmGuidelines, projectConvention } from '../sources.ts';

/** A sign beside a joint complaint, and how far it reaches. */
export interface RedFlagRule {
  readonly flag: RedFlagId;
  readonly caution: Caution;
  /** `joint`: that joint is not loaded before a clinician was asked. `training`: no session at all. */
  readonly pauses: 'joint' | 'training';
}

/** One row a sign. */
export const redFlagRules: readonly RedFlagRule[] = [
  {
    flag: 'numbness-or-tingling',
    caution: {
      id: 'numbness-or-tingling',
      level: 'stop',
      what: 'There is numbness or tingling, as in fingers or toes.',
      why: 'It can come from a nerve, and an exchange of exercises does not settle that.',
      instead: 'Pause loaded work for that joint and see a clinician before any exchange.',
      ask: ['physician', 'physiotherapist'],
      sources: [acsmGuidelines, projectConvention],
    },
    pauses: 'joint',
  },
  {
    flag: 'weakness',
    caution: {
      id: 'new-weakness',
      level: 'stop',
      what: 'There is new weakness beside the pain.',
      why: 'It can come from a nerve or a torn tendon.',
      instead:
        'Pause loaded work for that joint and see a clinician; if it came suddenly, at once.',
      ask: ['physician', 'emergency-services'],
      sources: [acsmGuidelines, projectConvention],
    },
    pauses: 'joint',
  },
  {
    flag: 'after-an-injury',
    caution: {
      id: 'pain-after-injury',
      level: 'stop',
      what: 'The pain began with an injury.',
      why: 'What was hurt has to be looked at before it is loaded.',
      instead: 'Pause loaded work for that joint and see a clinician.',
      ask: ['physician', 'physiotherapist'],
      sources: [projectConvention],
    },
    pauses: 'joint',
  },
  {
    flag: 'pain-at-night',
    caution: {
      id: 'pain-at-night',
      level: 'stop',
      what: 'The joint hurts at night or at rest.',
      why: 'Pain that load does not explain needs a clinician.',
      instead: 'Pause loaded work for that joint and see a clinician.',
      ask: ['physician', 'physiotherapist'],
      sources: [projectConvention],
    },
    pauses: 'joint',
  },
  {
    flag: 'swelling-or-heat',
    caution: {
      id: 'swelling-or-heat',
      level: 'stop',
      what: 'The joint is swollen or hot.',
      why: 'Swelling says that something in the joint has reacted.',
      instead: 'Pause loaded work for that joint and see a clinician.',
      ask: ['physician', 'physiotherapist'],
      sources: [projectConvention],
    },
    pauses: 'joint',
  },
  {
    flag: 'locking-or-giving-way',
    caution: {
      id: 'locking-or-giving-way',
      level: 'stop',
      what: 'The joint locks, catches or gives way.',
      why: 'Something in the joint may be in the way or torn.',
      instead: 'Pause loaded work for that joint and see a clinician.',
      ask: ['physician', 'physiotherapist'],
      sources: [acsmGuidelines, projectConvention],
    },
    pauses: 'joint',
  },
  {
    flag: 'fever-or-unwell',
    caution: {
      id: 'fever-or-unwell',
      level: 'stop',
      what: 'There is fever, or the person feels ill.',
      why: 'Hard effort during an infection burdens the heart; joint pain with fever needs a physician.',
      instead:
        'No session until well; with joint pain, breathlessness or chest pain see a physician.',
      ask: ['physician'],
      sources: [projectConvention],
    },
    pauses: 'training',
  },
  {
    flag: 'bladder-or-bowel-change',
    caution: {
      id: 'bladder-or-bowel-change',
      level: 'stop',
      what: 'Bladder or bowel control has changed, or the saddle area is numb.',
      why: 'With back pain this can be an emergency of the nerves.',
      instead: 'No session. Emergency care now.',
      ask: ['emergency-services'],
      sources: [acsmGuidelines],
    },
    pauses: 'training',
  },
];
