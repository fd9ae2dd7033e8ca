/** A sign of heart, vessel, metabolic or kidney disease, at rest or with effort. */
export type SymptomId =
  | 'chest-discomfort'
  | 'breathless-at-rest-or-mild-effort'
  | 'dizziness-or-fainting'
  | 'breathless-lying-down'
  | 'ankle-swelling'
  | 'palpitations'
  | 'calf-pain-when-walking'
  | 'heart-murmur'
  | 'unusual-tiredness';

/** A disease that is known, by what it concerns. */
export type ConditionId = 'heart-or-vessels' | 'metabolic' | 'kidney';

/** A sign beside a joint complaint that asks for a clinician before that joint is loaded. */
export type RedFlagId =
  | 'pain-at-night'
  | 'after-an-injury'
  | 'weakness'
  | 'numbness-or-tingling'
  | 'swelling-or-heat'
  | 'locking-or-giving-way'
  | 'fever-or-unwell'
  | 'bladder-or-bowel-change';

/** A joint complaint, by where and when it hurts and not by diagnosis. */
export type ComplaintId =
  | 'shoulder-front-bottom-of-press'
  | 'shoulder-slips-or-unstable'
  | 'shoulder-raising-the-arm'
  | 'elbow-outer'
  | 'elbow-back-or-inner'
  | 'wrist'
  | 'low-back'
  | 'hip-front-deep-bend'
  | 'knee-front'
  | 'knee-tendon-front'
  | 'ankle';

/** A joint that hurts, and what comes with it. */
export interface Complaint {
  readonly kind: ComplaintId;
  /** What else is there. An empty list says that it was asked and there is nothing. */
  readonly redFlags?: readonly RedFlagId[];
}

/** What is known of somebody's blood pressure. */
export interface BloodPressure {
  readonly status: 'not-raised' | 'treated' | 'untreated' | 'unknown';
  /** The last reading at rest, in mmHg. */
  readonly reading?: { readonly systolic: number; readonly diastolic: number };
  readonly doctorAgrees?: boolean;
  readonly medicines?: readonly ('beta-blocker' | 'diuretic' | 'other')[];
}

/** Of the body. */
export type Side = 'left' | 'right';

/**
 * What a licensed clinician has said about this person. It replaces the library's own defaults
 * for medical reasons, in either direction, and is a hard filter for exercises.
 */
export interface ClinicianLimits {
  readonly by: 'physician' | 'physiotherapist' | 'obstetric-care';
  /** Agreed to resistance training, knowing the complaint or condition. */
  readonly agreesToTraining?: boolean;
  /** What is not to be done, in the clinician's words: `deadlift`, `bent-over row`. */
  readonly notAllowed?: readonly string[];
  /** Last day on which `notAllowed` and `handsOutOfUse` hold, `YYYY-MM-DD`, if the clinician gave one. */
  readonly until?: string;
  /** A hand that may not grip, push, hang or lean. */
  readonly handsOutOfUse?: readonly Side[];
  readonly failureChains?: 'allowed' | 'refused';
  readonly longHolds?: 'allowed' | 'refused';
  readonly maximalSingles?: 'allowed' | 'refused';
  /** Heaviest load as a share of the one-rep max, 0 to 1. */
  readonly intensityCap?: number;
  /** Fewest repetitions left at the end of a set. */
  readonly repsInReserve?: number;
  /** Highest pain allowed during a set, 0 to 10. */
  readonly painLimit?: number;
}

/** What was asked of a person before training. A field left out was not asked. */
export interface ClientHealth {
  readonly ageYears?: number;
  /** Signs now or lately; an empty list says that there are none. */
  readonly symptoms?: readonly SymptomId[];
  /** Known disease; an empty list says that there is none. */
  readonly conditions?: readonly ConditionId[];
  /** `active`: at least 30 minutes of moderate effort on three days a week for three months. */
  readonly activity?: 'active' | 'inactive';
  readonly bloodPressure?: BloodPressure;
  readonly pregnancy?: 'no' | 'pregnant' | 'birth-within-12-weeks';
  readonly complaints?: readonly Complaint[];
  /** `first-time`: never, or not in the last six months. */
  readonly loweringHeavyWork?: 'accustomed' | 'first-time';
  readonly clinician?: ClinicianLimits;
}

/** What is planned, and with whom. */
export interface TrainingContext {
  /** `vigorous` when it is left out: sets near failure are. */
  readonly intensity?: 'moderate' | 'vigorous';
  /** Nobody who can help with a load is there. */
  readonly alone?: boolean;
  /** Lowerings past lifting failure, or heavier than can be lifted, are planned. */
  readonly loweringHeavy?: boolean;
  /** The day of training, `YYYY-MM-DD`: needed to know whether a dated limit still holds. */
  readonly date?: string;
}
