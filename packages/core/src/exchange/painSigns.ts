import { type StopRule, stopRules } from '../safety/index.ts';

const PAIN_SIGNS = [
  'sharp-or-radiating-pain',
  'rising-pain',
  'pop-or-sudden-loss',
  'numbness-or-weakness',
];

/** Signs that end the trial of an exercise. */
export function painSigns(): readonly StopRule[] {
  return stopRules.filter(({ id }) => PAIN_SIGNS.includes(id));
}
