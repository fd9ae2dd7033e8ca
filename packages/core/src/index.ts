/**
 * Every folder that needs no other package, in one entry. `schema` is an entry of its own only,
 * since it brings a validator.
 *
 * @packageDocumentation
 */
export * from './anatomy/index.ts';
export * from './basis/index.ts';
export * from './capacity/index.ts';
export * from './equipment/index.ts';
export * from './exchange/index.ts';
export * from './extension/index.ts';
export * from './load/index.ts';
export * from './pairing/index.ts';
export * from './progress/index.ts';
export * from './recovery/index.ts';
export * from './safety/index.ts';
export * from './session/index.ts';
export * from './strength/index.ts';
export * from './tempo/index.ts';
export * from './warmup/index.ts';
