/** The entries of `@windlass/core`, ground floor first, and what each answers. */
export const entries = [
  {
    name: 'load',
    answers: 'exact loads in kilograms and pounds: reading, writing, rounding to a grid',
  },
  { name: 'tempo', answers: 'tempo prescriptions, seconds under load, cue timelines' },
  {
    name: 'equipment',
    answers: 'the loads a gym can make of its bars, plates, dumbbells and stacks',
  },
  { name: 'anatomy', answers: 'muscles, joints and exercises as data' },
  { name: 'safety', answers: 'cautions and screening as data' },
  {
    name: 'strength',
    answers: 'reps against load, one-rep-max equations, the load for a rep window',
  },
  { name: 'capacity', answers: 'the fatigue state: what reps take and rest returns' },
  { name: 'warmup', answers: 'ramps up to the work load' },
  { name: 'extension', answers: 'sets that go on past lifting failure' },
  { name: 'pairing', answers: 'isolation and compound lifts in a pair' },
  { name: 'exchange', answers: 'which exercise instead, and why' },
  { name: 'recovery', answers: 'dose, readiness, the next date, calendar files' },
  { name: 'progress', answers: 'logs, the next load, stalls, layoffs' },
  { name: 'session', answers: 'a whole session from a client, a gym and an intent' },
  { name: 'schema', answers: 'checks for everything that crosses a boundary, and JSON Schema' },
  { name: 'basis', answers: 'the shapes that all entries share: bands, problems, sources' },
] as const;
