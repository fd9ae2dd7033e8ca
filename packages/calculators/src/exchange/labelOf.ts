import { exerciseOf } from '../shared/exerciseFields.ts';
import type { ExchangeInput } from './fields.ts';
import { said } from './words.ts';

/** What was asked for, in a few words. */
export function labelOf({ wanted, exercise }: Pick<ExchangeInput, 'wanted' | 'exercise'>): string {
  return wanted === 'exercise' ? said.instead(exerciseOf(exercise).name) : said.area(wanted);
}
