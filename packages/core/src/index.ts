/**
 * Every folder that needs no other package, as a namespace each: `import { load } from '@windlass/core'`.
 * `schema` and `recovery` are entries of their own only, since they bring a validator and a
 * time-zone library. Applications that want the least import the folders' entries.
 *
 * @packageDocumentation
 */
/** Muscles, joints and exercises as data. */
export * as anatomy from './anatomy/index.ts';
/** What all folders speak: problems, bands, sources. */
export * as basis from './basis/index.ts';
/** The one fatigue state: what reps and holds cost, what rest returns. */
export * as capacity from './capacity/index.ts';
/** What a gym can make of its bars, plates, dumbbells and stacks. */
export * as equipment from './equipment/index.ts';
/** Which exercise instead, and why. */
export * as exchange from './exchange/index.ts';
/** Past lifting failure: what may follow what, and the live set. */
export * as extension from './extension/index.ts';
/** Exact loads, units, parsing, grids. */
export * as load from './load/index.ts';
/** Isolation and compound, and what the first does to the second. */
export * as pairing from './pairing/index.ts';
/** Logs, next load, stalls, layoffs. */
export * as progress from './progress/index.ts';
/** Cautions, limits and stop rules as data. */
export * as safety from './safety/index.ts';
/** A whole session from a client, a gym and an intent. */
export * as session from './session/index.ts';
/** Repetitions against load, and the load for a window. */
export * as strength from './strength/index.ts';
/** Prescriptions, seconds under load, counts. */
export * as tempo from './tempo/index.ts';
/** Ramps to a work load. */
export * as warmup from './warmup/index.ts';
