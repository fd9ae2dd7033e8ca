import * as z from 'zod/mini';
import { day, decimalNumber, fields, list, oneOf, text, wholeNumber, yesOrNo } from './field.ts';

const redFlag = oneOf('what else is there beside the complaint', [
  'pain-at-night',
  'after-an-injury',
  'weakness',
  'numbness-or-tingling',
  'swelling-or-heat',
  'locking-or-giving-way',
  'fever-or-unwell',
  'bladder-or-bowel-change',
]);

const complaint = fields('a complaint', {
  kind: oneOf('the complaint, by where and when it hurts,', [
    'shoulder-front-bottom-of-press',
    'shoulder-slips-or-unstable',
    'shoulder-raising-the-arm',
    'elbow-outer',
    'elbow-back-or-inner',
    'wrist',
    'low-back',
    'hip-front-deep-bend',
    'knee-front',
    'knee-tendon-front',
    'ankle',
  ]),
  redFlags: z.exactOptional(list('what else is there', redFlag, 0, 8)),
});

const bloodPressure = fields('the blood pressure', {
  status: oneOf('the blood pressure', ['not-raised', 'treated', 'untreated', 'unknown']),
  reading: z.exactOptional(
    fields('the last reading', {
      systolic: wholeNumber('the upper figure in mmHg', 60, 300),
      diastolic: wholeNumber('the lower figure in mmHg', 30, 200),
    }),
  ),
  doctorAgrees: z.exactOptional(yesOrNo('whether the doctor agrees')),
  medicines: z.exactOptional(
    list('the medicines', oneOf('a medicine', ['beta-blocker', 'diuretic', 'other']), 0, 3),
  ),
});

const permission = (what: string) => z.exactOptional(oneOf(what, ['allowed', 'refused']));

const clinician = fields("the clinician's limits", {
  by: oneOf('who set the limits', ['physician', 'physiotherapist', 'obstetric-care']),
  agreesToTraining: z.exactOptional(yesOrNo('whether the clinician agrees to training')),
  notAllowed: z.exactOptional(list('what is not allowed', text('what is not allowed'), 0, 50)),
  until: z.exactOptional(day('the last day of the limit')),
  handsOutOfUse: z.exactOptional(
    list('the hands out of use', oneOf('a hand', ['left', 'right']), 0, 2),
  ),
  failureChains: permission('whether going past failure is allowed'),
  longHolds: permission('whether long holds are allowed'),
  maximalSingles: permission('whether maximal singles are allowed'),
  intensityCap: z.exactOptional(
    decimalNumber('the heaviest load as a share of the one-rep max', 0.05, 1),
  ),
  repsInReserve: z.exactOptional(wholeNumber('the repetitions to leave', 0, 20)),
  painLimit: z.exactOptional(decimalNumber('the highest pain during a set', 0, 10)),
});

/** What was asked of a person before training. A field left out was not asked. */
export const healthSchema = fields('the health answers', {
  ageYears: z.exactOptional(wholeNumber('the age in years', 5, 110)),
  symptoms: z.exactOptional(
    list(
      'the signs',
      oneOf('a sign', [
        'chest-discomfort',
        'breathless-at-rest-or-mild-effort',
        'dizziness-or-fainting',
        'breathless-lying-down',
        'ankle-swelling',
        'palpitations',
        'calf-pain-when-walking',
        'heart-murmur',
        'unusual-tiredness',
      ]),
      0,
      9,
    ),
  ),
  conditions: z.exactOptional(
    list(
      'the known diseases',
      oneOf('a disease, by what it concerns,', ['heart-or-vessels', 'metabolic', 'kidney']),
      0,
      3,
    ),
  ),
  activity: z.exactOptional(oneOf('the activity', ['active', 'inactive'])),
  bloodPressure: z.exactOptional(bloodPressure),
  pregnancy: z.exactOptional(
    oneOf('the pregnancy answer', ['no', 'pregnant', 'birth-within-12-weeks']),
  ),
  complaints: z.exactOptional(list('the complaints', complaint, 0, 11)),
  loweringHeavyWork: z.exactOptional(
    oneOf('the experience with lowering-heavy work', ['accustomed', 'first-time']),
  ),
  clinician: z.exactOptional(clinician),
});
