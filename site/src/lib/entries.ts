/** The entries that the reference covers, ground floor first, and what each answers. */
export const entries = [
  entry('load', 'exact loads in kilograms and pounds: reading, writing, rounding to a grid'),
  entry('tempo', 'tempo prescriptions, seconds under load, cue timelines'),
  entry('equipment', 'the loads a gym can make of its bars, plates, dumbbells and stacks'),
  entry('anatomy', 'muscles, joints and exercises as data'),
  entry('safety', 'cautions and screening as data'),
  entry('strength', 'reps against load, one-rep-max equations, the load for a rep window'),
  entry('capacity', 'the fatigue state: what reps take and rest returns'),
  entry('warmup', 'ramps up to the work load'),
  entry('extension', 'sets that go on past lifting failure'),
  entry('pairing', 'isolation and compound lifts in a pair'),
  entry('exchange', 'which exercise instead, and why'),
  entry('recovery', 'dose, readiness, the next date, calendar files'),
  entry('progress', 'logs, the next load, stalls, layoffs'),
  entry('session', 'a whole session from a client, a gym and an intent'),
  entry('schema', 'checks for everything that crosses a boundary, and JSON Schema'),
  entry('basis', 'the shapes that all entries share: bands, problems, sources'),
  {
    name: 'calculators',
    module: '@windlass/calculators',
    answers: 'tools with their form, address, schema and view, from one definition each',
  },
] as const;

function entry<const Name extends string>(name: Name, answers: string) {
  return { name, module: `@windlass/core/${name}`, answers } as const;
}

/** The module that a folder of the reference documents, and what it answers. Throws on an unlisted one. */
export function entryNamed(name: string): (typeof entries)[number] {
  const found = entries.find((one) => one.name === name);
  if (found === undefined)
    throw new RangeError(`entryNamed: ${name} is not listed among the entries`);
  return found;
}
