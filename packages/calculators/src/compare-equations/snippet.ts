import { codeLine } from '../shared/asCode.ts';
import type { EquationsResult } from './compute.ts';
import { exactOf } from './exactOf.ts';
import type { EquationsInput } from './fields.ts';

/** The same comparison with the library. */
export function snippet(input: EquationsInput, result: EquationsResult): string {
  const { load, reps, lift, show } = input;
  const exact = exactOf(input, result);
  const asked = lift === 'any' ? reps : `${reps}, ${codeLine(lift)}`;
  if (result.spread === null) {
    return `import { loadFromValue, ${show === 'kg' ? 'toKg' : 'toLb'} } from '@windlass/core/load';
import { compareEquations } from '@windlass/core/strength';

const load = loadFromValue(${codeLine(load)});
console.log(compareEquations(load, ${asked}).kind); // 'single'
console.log(${show === 'kg' ? 'toKg' : 'toLb'}(load)); // ${exact}
`;
  }
  const perPound = show === 'kg' ? '' : ' * STEPS_PER_KG) / STEPS_PER_LB';
  const apart = 'spread.highestKg - spread.lowestKg';
  return `import { loadFromValue${show === 'kg' ? '' : ', STEPS_PER_KG, STEPS_PER_LB'} } from '@windlass/core/load';
import { compareEquations } from '@windlass/core/strength';

const comparison = compareEquations(loadFromValue(${codeLine(load)}), ${asked});
if (comparison.kind === 'single') throw new Error('a single');
for (const { equation, oneRepMaxKg, place } of comparison.answers) {
  console.log(equation.name, oneRepMaxKg, place);
}
const spread = comparison.${result.isInside ? 'inside' : 'all'};
if (!spread) throw new Error('no equation was made for such a set');
console.log(${show === 'kg' ? apart : `((${apart})${perPound}`}); // ${exact}
`;
}
