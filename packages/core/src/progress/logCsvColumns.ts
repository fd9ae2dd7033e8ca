/** The columns of a log file of our own format, in order; `writeLogCsv` says what each holds. */
export const logCsvColumns = [
  'date',
  'exercise',
  'set',
  'side',
  'load',
  'unit',
  'counts',
  'hands',
  'reps',
  'ended',
  'reserve',
  'tempo',
  'rest',
  'tags',
  'equipment',
  'note',
] as const;
