import type { Load, LoadValue, Unit } from '@windlass/core/load';
import { formatLoad, loadFromValue, toKg, toLb } from '@windlass/core/load';
import { words } from '../words.ts';

/** A load in the unit asked for: `82.5 kg`, `≈ 60.82 kg`. */
export function loadWords(load: Load, unit: Unit): string {
  return formatLoad(load, { unit });
}

/** A plate or a dumbbell in the unit that is written on it. */
export function pieceWords({ value, unit }: LoadValue): string {
  return formatLoad(loadFromValue({ value, unit }), { unit, maxDecimals: 3 });
}

/** Number and unit apart, the other unit beside them, and the unrounded figure. */
export function loadFace(load: Load, unit: Unit) {
  const [, mark = '', number = ''] = /^(≈\s)?(.*)\s\S+$/.exec(loadWords(load, unit)) ?? [];
  const other = unit === 'kg' ? 'lb' : 'kg';
  return {
    value: `${mark.trim()}${number}`,
    unit,
    also: formatLoad(load, { unit: other, maxDecimals: 1 }),
    exact: unit === 'kg' ? toKg(load) : toLb(load),
  };
}

/** How far one load is from another, with `above` or `below`; empty where they are equal. */
export function distanceWords(load: Load, from: Load, unit: Unit): string {
  if (load === from) return '';
  const distance = loadWords(Math.abs(load - from) as Load, unit);
  return load > from ? words.distance.above(distance) : words.distance.below(distance);
}
