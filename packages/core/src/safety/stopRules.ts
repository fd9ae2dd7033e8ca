import type { Source } from '../basis/index.ts';
import type { Adviser } from './Caution.ts';
import { acog2020, acsmGuidelines, projectConvention, rawson2017 } from './sources.ts';

/** A sign that ends something, during a set or after it. */
export interface StopRule {
  readonly id: string;
  readonly sign: string;
  readonly when: 'during' | 'after';
  readonly ends: 'the-set' | 'the-exercise' | 'the-session';
  readonly action: string;
  readonly ask: readonly Adviser[];
  readonly sources: readonly Source[];
}

/** Signs to stop for, for everybody and every chain; the gravest first. */
export const stopRules: readonly StopRule[] = [
  {
    id: 'chest-discomfort',
    sign: 'Pain, pressure or tightness in the chest, arm, neck or jaw',
    when: 'during',
    ends: 'the-session',
    action: 'Put the load down, sit, and get emergency help.',
    ask: ['emergency-services'],
    sources: [acsmGuidelines],
  },
  {
    id: 'fainting-or-dizziness',
    sign: 'Fainting, dizziness or light-headedness',
    when: 'during',
    ends: 'the-session',
    action:
      'Put the load down, sit or lie; get help if it does not pass in a minute or comes back. Ask a physician before the next session.',
    ask: ['physician', 'emergency-services'],
    sources: [acsmGuidelines],
  },
  {
    id: 'sudden-severe-headache',
    sign: 'A sudden severe headache',
    when: 'during',
    ends: 'the-session',
    action: 'Put the load down and get emergency help.',
    ask: ['emergency-services'],
    sources: [acsmGuidelines],
  },
  {
    id: 'breathless-or-palpitations',
    sign: 'Breathlessness out of proportion, palpitations or confusion',
    when: 'during',
    ends: 'the-session',
    action: 'Put the load down, sit, and get help.',
    ask: ['emergency-services', 'physician'],
    sources: [acsmGuidelines],
  },
  {
    id: 'numbness-or-weakness',
    sign: 'New numbness, weakness, or loss of bladder or bowel control',
    when: 'during',
    ends: 'the-session',
    action:
      'Put the load down. A face, arm, speech, bladder or bowel sign: emergency help. Otherwise see a physician before loading again.',
    ask: ['emergency-services', 'physician'],
    sources: [acsmGuidelines],
  },
  {
    id: 'pop-or-sudden-loss',
    sign: 'A pop, or a sudden loss of strength',
    when: 'during',
    ends: 'the-exercise',
    action: 'Nothing more for that joint today. See a clinician.',
    ask: ['physician', 'physiotherapist'],
    sources: [acsmGuidelines],
  },
  {
    id: 'sharp-or-radiating-pain',
    sign: 'Sharp or catching pain in a joint, or pain or tingling that runs down a limb',
    when: 'during',
    ends: 'the-exercise',
    action:
      'Put the load down. Another set-up or exercise only if it is free of it; see a clinician if it stays.',
    ask: ['physiotherapist', 'physician'],
    sources: [acsmGuidelines],
  },
  {
    id: 'rising-pain',
    sign: 'Pain that rises from set to set, or above the clinician’s limit on a scale of 0 to 10',
    when: 'during',
    ends: 'the-exercise',
    action: 'Stop the exercise. Repeat or undo the last step up next time.',
    ask: ['physiotherapist', 'physician'],
    sources: [acsmGuidelines, projectConvention],
  },
  {
    id: 'breath-held',
    sign: 'A breath that is held and cannot be let go',
    when: 'during',
    ends: 'the-set',
    action: 'End the set and breathe. Go on lighter or shorter.',
    ask: [],
    sources: [projectConvention],
  },
  {
    id: 'lowering-not-controlled',
    sign: 'A lowering much faster than prescribed',
    when: 'during',
    ends: 'the-set',
    action: 'End the set; the muscle can no longer brake the load.',
    ask: [],
    sources: [projectConvention],
  },
  {
    id: 'dark-urine',
    sign: 'Dark, cola-coloured or very little urine in the days after',
    when: 'after',
    ends: 'the-session',
    action: 'Urgent care now. No training until a physician has agreed.',
    ask: ['emergency-services', 'physician'],
    sources: [rawson2017, acsmGuidelines],
  },
  {
    id: 'swelling-beyond-soreness',
    sign: 'Severe swelling, or weakness and pain far beyond ordinary soreness, in the days after',
    when: 'after',
    ends: 'the-session',
    action: 'Urgent care. Soreness of a day or two that eases with movement is ordinary.',
    ask: ['physician', 'emergency-services'],
    sources: [rawson2017, projectConvention],
  },
];

/** Further signs in pregnancy. */
export const pregnancyStopRules: readonly StopRule[] = [
  {
    id: 'pregnancy-bleeding-or-fluid',
    sign: 'Bleeding, loss of fluid, or regular painful contractions',
    when: 'during',
    ends: 'the-session',
    action: 'Stop and call the obstetric care provider now.',
    ask: ['obstetric-care', 'emergency-services'],
    sources: [acog2020],
  },
  {
    id: 'pregnancy-calf-or-balance',
    sign: 'Pain or swelling in the calf, belly pain, or weakness that affects balance',
    when: 'during',
    ends: 'the-session',
    action: 'Stop and call the obstetric care provider.',
    ask: ['obstetric-care'],
    sources: [acog2020],
  },
];
