import type { Load } from '../load/index.ts';

/** How far a load is off its target, in whole thousandths of the work load, squared. */
export function offCost(load: Load, target: Load, work: Load): number {
  return Math.round((1000 * Math.abs(load - target)) / work) ** 2;
}

/** A jump counts as larger than the one before it from this share of the work load on. */
const GROWTH_SLACK = 0.01;

/** Whether the jump to `next` is larger than the one from `before` to `at`; -Infinity is no jump. */
export function jumpGrows(before: number, at: Load, next: Load, work: Load): boolean {
  return next - at > at - before + GROWTH_SLACK * work;
}
