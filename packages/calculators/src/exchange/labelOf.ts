import { exercises } from '@windlass/core/anatomy';
import { exerciseOf } from '../shared/exerciseFields.ts';
import type { ExchangeInput } from './fields.ts';
import { said } from './words.ts';

/** What was asked for, in a few words. */
export function labelOf({ wanted, exercise }: Pick<ExchangeInput, 'wanted' | 'exercise'>): string {
  return wanted === 'exercise'
    ? said.instead(exerciseOf(exercises, exercise).name)
    : said.area(wanted);
}
