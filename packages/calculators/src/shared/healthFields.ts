import type { BloodPressure, ClientHealth, ConditionId, SymptomId } from '@windlass/core/safety';
import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields } from '../fields/Field.ts';

/** What is asked of a person before hard work. Nothing need be answered. */
export const healthFields = {
  age: {
    kind: 'number',
    label: 'Age',
    help: 'Empty if it was not asked.',
    optional: true,
    unit: 'years',
    min: 5,
    max: 110,
    step: 1,
    default: null,
  },
  sign: {
    kind: 'choice',
    label: 'Signs, now or lately',
    help: 'The gravest one, at rest or with effort.',
    options: [
      { id: 'not-asked', label: 'Not asked' },
      { id: 'none', label: 'None of these' },
      { id: 'chest-discomfort', label: 'Discomfort in chest, neck, jaw or arm' },
      { id: 'breathless-at-rest-or-mild-effort', label: 'Breathless at rest or with mild effort' },
      { id: 'dizziness-or-fainting', label: 'Dizziness or fainting' },
      { id: 'breathless-lying-down', label: 'Breathless lying down' },
      { id: 'ankle-swelling', label: 'Swollen ankles' },
      { id: 'palpitations', label: 'Palpitations' },
      { id: 'calf-pain-when-walking', label: 'Pain in the calf when walking' },
      { id: 'heart-murmur', label: 'A heart murmur' },
      { id: 'unusual-tiredness', label: 'Unusual tiredness' },
    ],
    default: 'not-asked',
  },
  disease: {
    kind: 'choice',
    label: 'A known disease',
    help: 'As a physician has named it.',
    options: [
      { id: 'not-asked', label: 'Not asked' },
      { id: 'none', label: 'None of these' },
      { id: 'heart-or-vessels', label: 'Of heart or vessels' },
      { id: 'metabolic', label: 'Of the metabolism, such as diabetes' },
      { id: 'kidney', label: 'Of the kidneys' },
    ],
    default: 'not-asked',
  },
  activity: {
    kind: 'choice',
    label: 'Active in the last three months',
    help: 'Half an hour of moderate effort on three days a week.',
    options: [
      { id: 'not-asked', label: 'Not asked' },
      { id: 'active', label: 'Yes' },
      { id: 'inactive', label: 'No' },
    ],
    default: 'not-asked',
  },
  pressure: {
    kind: 'choice',
    label: 'Blood pressure',
    help: 'Holds and straining raise it most.',
    options: [
      { id: 'not-asked', label: 'Not asked' },
      { id: 'not-raised', label: 'Not raised' },
      { id: 'treated', label: 'Treated' },
      { id: 'untreated', label: 'Raised, not treated' },
      { id: 'unknown', label: 'Not measured lately' },
    ],
    default: 'not-asked',
  },
  pregnancy: {
    kind: 'choice',
    label: 'Pregnancy',
    help: 'The last twelve weeks count as well.',
    options: [
      { id: 'not-asked', label: 'Not asked' },
      { id: 'no', label: 'No' },
      { id: 'pregnant', label: 'Pregnant' },
      { id: 'birth-within-12-weeks', label: 'Gave birth' },
    ],
    default: 'not-asked',
  },
  clinician: {
    kind: 'choice',
    label: 'A clinician has said',
    help: 'Their word comes before the limits that this page would set for a complaint or a condition.',
    options: [
      { id: 'nothing', label: 'Nothing yet' },
      { id: 'agrees', label: 'Training, yes' },
      { id: 'past-failure', label: 'Past failure, yes' },
      { id: 'short-of-failure', label: 'Past failure, no' },
    ],
    default: 'nothing',
  },
} as const satisfies Fields;

export const healthGroup: FieldGroup<keyof typeof healthFields> = {
  legend: 'About the lifter: age, health, a clinician’s word',
  fields: ['age', 'sign', 'disease', 'activity', 'pressure', 'pregnancy', 'clinician'],
  folded: true,
};

/** The values of these fields. */
export interface HealthInput {
  readonly age: number | null;
  readonly sign: 'not-asked' | 'none' | SymptomId;
  readonly disease: 'not-asked' | 'none' | ConditionId;
  readonly activity: 'not-asked' | 'active' | 'inactive';
  readonly pressure: 'not-asked' | BloodPressure['status'];
  readonly pregnancy: 'not-asked' | NonNullable<ClientHealth['pregnancy']>;
  readonly clinician: 'nothing' | 'agrees' | 'past-failure' | 'short-of-failure';
}

/** The answers as the library takes them; what was not asked is left out. */
export function clientOf(input: HealthInput): ClientHealth {
  const { age, sign, disease, activity, pressure, pregnancy } = input;
  const clinician = clinicianOf(input.clinician);
  return {
    ...(age !== null && { ageYears: age }),
    ...(sign !== 'not-asked' && { symptoms: sign === 'none' ? [] : [sign] }),
    ...(disease !== 'not-asked' && { conditions: disease === 'none' ? [] : [disease] }),
    ...(activity !== 'not-asked' && { activity }),
    ...(pressure !== 'not-asked' && { bloodPressure: { status: pressure } }),
    ...(pregnancy !== 'not-asked' && { pregnancy }),
    ...(clinician && { clinician }),
  };
}

function clinicianOf(said: HealthInput['clinician']): ClientHealth['clinician'] {
  if (said === 'nothing') return undefined;
  const agreed = { by: 'physician', agreesToTraining: true } as const;
  if (said === 'agrees') return agreed;
  const word = said === 'past-failure' ? 'allowed' : 'refused';
  return { ...agreed, failureChains: word, longHolds: word };
}
