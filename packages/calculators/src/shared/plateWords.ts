import type { Plate } from '@windlass/core/equipment';
import { loadFromValue, toKg } from '@windlass/core/load';
import type { DrawnPlate } from '../ui/BarDrawing.tsx';
import { pieceWords } from './loadWords.ts';

/** `2 × 20 + 10 + 1.25 kg`, or with a unit on each where kilograms and pounds mix. */
export function plateWords(side: readonly Plate[]): string {
  const isMixed = new Set(side.map(({ weight }) => weight.unit)).size > 1;
  const names = side.map(({ weight }) => (isMixed ? pieceWords(weight) : String(weight.value)));
  const said = names
    .filter((name, at) => name !== names[at - 1])
    .map((name) => {
      const count = names.filter((other) => other === name).length;
      return count === 1 ? name : `${count}\u00a0×\u00a0${name}`;
    })
    .join(' + ');
  return isMixed || side.length === 0 ? said : `${said}\u00a0${side[0]?.weight.unit}`;
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
