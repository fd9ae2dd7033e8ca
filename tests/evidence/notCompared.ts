/** A published data set that stands against nothing here, and why. */
export interface NotCompared {
  readonly table: string;
  readonly why: string;
}

const outcome =
  'What training leads to over weeks; the library promises no results, so it predicts none.';
const rule =
  'Rules and figures behind cautions, not measurements to predict; each caution names its source and has its own tests.';
const anatomy =
  'Anatomy from textbooks, from memory; it is the data of the exercises, not a figure to predict.';

/** Every collected data set that is not compared with the library. */
export const notCompared: readonly NotCompared[] = [
  { table: 'hoeger-1990-design', why: 'Which differences were significant, without counts.' },
  {
    table: 'richens-2014-origin-of-rep-charts',
    why: 'Where charts come from, in words; quoted beside each equation.',
  },
  {
    table: 'moir-2013-eccentric-bench',
    why: 'A one-rep max of lowering drawn out by a straight line from 110 to 130 %, not measured.',
  },
  {
    table: 'one-rm-equations-recalled',
    why: 'Formulas from memory; what they give is checked by the arithmetic copied above.',
  },
  { table: 'lesuer-1997', why: 'Recalled, and only in words.' },
  { table: 'pereira-2007-training-two-speeds', why: outcome },
  {
    table: 'tempo-elasticity-derived',
    why: 'Worked out from three data sets that are compared themselves; counting it would count them twice.',
  },
  {
    table: 'wilk-2019-eccentric-power',
    why: 'Power and bar speed, which the library does not predict.',
  },
  { table: 'keogh-1999-tut', why: 'Times of sets whose loads were only recalled.' },
  {
    table: 'slow-protocol-loads-recalled',
    why: 'Recalled, and loads that a study chose, not loads that failed.',
  },
  { table: 'slow-training-outcomes', why: outcome },
  { table: 'tempo-meta-analyses', why: outcome },
  {
    table: 'steele-2025-time-under-load',
    why: 'Times to failure with loads that are not in the open data.',
  },
  {
    table: 'rir-rpe-mapping',
    why: 'A definition of a scale, and ratings of single lifts, which the library does not predict.',
  },
  {
    table: 'self-selected-loads',
    why: 'What people choose unasked, which the library does not predict.',
  },
  { table: 'proximity-to-failure', why: outcome },
  { table: 'volume-dose', why: `${outcome} Quoted beside the weekly dose, both sides.` },
  { table: 'single-set-evidence', why: `${outcome} Quoted beside the weekly dose, both sides.` },
  {
    table: 'tcc_equations',
    why: 'The equations of the fatigue model: checked by a numeric integration in the tests.',
  },
  {
    table: 'tcc_validation_intermittent',
    why: 'Errors of models on torque curves that are not printed.',
  },
  {
    table: 'tcc_parameters_muscle_sex',
    why: 'Other constants of the same model, which contradict the holding times by up to 80 %; not used.',
  },
  {
    table: 'reps_ecc_vs_con_equal_relative_load',
    why: 'Lifting alone with 3 or 6 s of rest after every repetition: not a set as the curve means it. Its bench press count is compared above.',
  },
  {
    table: 'fatigue_ecc_vs_con_maximal',
    why: 'Forty and more maximal efforts on a machine of constant speed: no load, no repetitions to failure.',
  },
  { table: 'beyond_failure_longterm', why: outcome },
  { table: 'recovery_damage_classes', why: 'Classes from memory.' },
  { table: 'mps_time_course', why: 'Protein synthesis is no clock of readiness.' },
  { table: 'recovery_modifiers', why: 'None is a measured factor on hours until recovery.' },
  {
    table: 'warmup_evidence',
    why: 'Bar speed, or protocols without their loads; the library claims no gain from a warm-up.',
  },
  { table: 'pape_meta', why: 'Jumps, sprints and throws; the library claims no bonus.' },
  { table: 'rest_interval_training', why: outcome },
  { table: 'muscle_actions', why: anatomy },
  { table: 'exercise_muscle_roles', why: anatomy },
  { table: 'joint_complaint_rules', why: rule },
  { table: 'blood_pressure_response', why: rule },
  { table: 'rhabdo_figures', why: rule },
  { table: 'screening_and_stop_rules', why: rule },
];
