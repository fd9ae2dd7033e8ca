/**
 * Every folder that needs no other package, as a namespace each: `import { load } from '@windlass/core'`.
 * `schema` and `recovery` are entries of their own only, since they bring a validator and a
 * time-zone library. Applications that want the least import the folders' entries.
 *
 * @packageDocumentation
 */
export * as anatomy from './anatomy/index.ts';
export * as basis from './basis/index.ts';
export * as capacity from './capacity/index.ts';
export * as equipment from './equipment/index.ts';
export * as exchange from './exchange/index.ts';
export * as extension from './extension/index.ts';
export * as load from './load/index.ts';
export * as pairing from './pairing/index.ts';
export * as progress from './progress/index.ts';
export * as safety from './safety/index.ts';
export * as session from './session/index.ts';
export * as strength from './strength/index.ts';
export * as tempo from './tempo/index.ts';
export * as warmup from './warmup/index.ts';
