import type { StageKind } from './Stage.ts';

/**
 * What each stage adds to the dose of a set to failure, which counts 1. A choice of this project;
 * only the order is backed: work past failure costs more than failure, help past failure about
 * half as much again (56.5 % against 38.3 % of force lost), lowering more than lifting or holding.
 */
export const stageDoses: Readonly<Record<StageKind, number>> = {
  lift: 1,
  lighter: 0.5,
  pause: 0.25,
  assisted: 0.5,
  'part-range': 0.25,
  hold: 0.25,
  lower: 0.5,
};
