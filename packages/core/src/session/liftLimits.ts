import { applyVariant, type Exercise, findExercise } from '../anatomy/index.ts';
import { inSentence } from '../basis/index.ts';
import { objectionsTo } from '../exchange/index.ts';
import type { Limits } from '../safety/index.ts';
import type { Lift } from './liftOf.ts';

/**
 * Why this person's limits keep a lift out, or nothing. Set-ups of the same exercise that the
 * limits leave open are named, so that it is not given up for want of another grip.
 */
export function liftLimits({ exercise, intent }: Lift, limits: Limits): string | undefined {
  const objections = objectionsTo(exercise, limits);
  if (objections.length === 0) return undefined;
  const reasons = objections.map(({ words }) => words).join(' ');
  const open = openSetUps(intent.exercise, limits);
  const instead =
    open.length > 0
      ? `These set-ups are left open: ${open.join(', ')}.`
      : `No set-up of ${exercise.name} is left open: take another exercise.`;
  return `${reasons} ${instead}`;
}

function openSetUps(id: string, limits: Limits): readonly string[] {
  const found = findExercise(id);
  if (found.kind === 'unknown') return [];
  const asUsual = isOpen(found.exercise, limits) ? ['the usual one'] : [];
  const open = found.exercise.variants.filter((variant) =>
    isOpen(applyVariant(found.exercise, variant), limits),
  );
  return [...asUsual, ...open.map((variant) => `"${variant.id}" (${inSentence(variant.name)})`)];
}

function isOpen(exercise: Exercise, limits: Limits): boolean {
  return objectionsTo(exercise, limits).length === 0;
}
