import type { NumberField } from '../fields/Field.ts';
import { readDecimal } from '../fields/readDecimal.ts';

/** The text one step up or down: the next whole multiple of the step, held inside the range. */
export function stepNumber(field: NumberField, text: string, direction: 1 | -1): string {
  const from = readDecimal(text) ?? field.default ?? field.min;
  return nextMultiple(from, field.step, direction, field.min, field.max);
}

/** The next multiple of `step` past `from`, held inside the range, as a text without float dust. */
export function nextMultiple(
  from: number,
  step: number,
  direction: 1 | -1,
  min: number,
  max: number,
): string {
  const steps = from / step;
  const near = Math.round(steps);
  const onGrid = Math.abs(steps - near) < 1e-9;
  const past = direction === 1 ? Math.ceil(steps) : Math.floor(steps);
  const next = (onGrid ? near + direction : past) * step;
  return String(Number(Math.min(max, Math.max(min, next)).toFixed(9)));
}
