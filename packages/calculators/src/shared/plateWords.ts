import type { Plate } from '@windlass/core/equipment';
import { loadFromValue, toKg } from '@windlass/core/load';
import type { DrawnPlate } from '../ui/BarDrawing.tsx';
import { pieceWords } from './loadWords.ts';

/** `20 + 10 + 1.25 kg`, or with a unit on each where kilograms and pounds mix. */
export function plateWords(side: readonly Plate[]): string {
  const units = new Set(side.map(({ weight }) => weight.unit));
  if (units.size !== 1) return side.map(({ weight }) => pieceWords(weight)).join(' + ');
  const [unit] = units;
  return `${side.map(({ weight }) => weight.value).join(' + ')}\u00a0${unit}`;
}

/** The plates of a side for a drawing, the outermost `newPerSide` of them marked as new. */
export function drawnPlates(side: readonly Plate[], newPerSide: number): readonly DrawnPlate[] {
  const isMixed = new Set(side.map(({ weight }) => weight.unit)).size > 1;
  return side.map(({ weight, thicknessMm, diameterMm }, place) => ({
    label: isMixed ? pieceWords(weight) : String(weight.value),
    kg: toKg(loadFromValue(weight)),
    ...(thicknessMm === undefined ? {} : { thicknessMm }),
    ...(diameterMm === undefined ? {} : { diameterMm }),
    isNew: place >= side.length - newPerSide,
  }));
}
