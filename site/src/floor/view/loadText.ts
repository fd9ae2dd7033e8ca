import { language } from '@windlass/calculators/ui';
import {
  formatLoad,
  type Load,
  type LoadValue,
  loadFromValue,
  type Unit,
} from '@windlass/core/load';

/** A load for people: `55.4 kg`, `≈ 48.08 kg`. */
export function loadText(load: Load, unit: Unit): string {
  return formatLoad(load, { unit, locale: language });
}

/** A weight as it is written on the thing itself. */
export function weightText({ value, unit }: LoadValue): string {
  return loadText(loadFromValue({ value, unit }), unit);
}
