import { asCode } from '../shared/asCode.ts';
import { barbellOf } from '../shared/barFields.ts';
import { loadFace } from '../shared/loadWords.ts';
import type { BarLoadingInput, BarLoadingResult } from './compute.ts';

const CHOOSERS = {
  nearest: 'nearestLoad',
  'at-most': 'nearestAtMost',
  'at-least': 'nearestAtLeast',
} as const;

/** The same loading with the library. */
export function snippet(input: BarLoadingInput, { chosen }: BarLoadingResult): string {
  const chooser = CHOOSERS[input.take];
  const convert = input.show === 'kg' ? 'toKg' : 'toLb';
  return `import { ${chooser}, reachableLoads } from '@windlass/core/equipment';
import { loadFromValue, ${convert} } from '@windlass/core/load';

const bar = ${asCode(barbellOf(input))} as const;
const plates = ${asCode(input.plates)} as const;
const choice = ${chooser}(reachableLoads(bar, { plates }), loadFromValue(${asCode(input.target)}));
if (choice.kind === 'none') throw new Error(choice.message);
console.log(choice.chosen.loading);
console.log(${convert}(choice.chosen.load)); // ${loadFace(chosen.load, input.show).exact}
`;
}
