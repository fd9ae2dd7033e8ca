import { toKg } from '@windlass/core/load';
import { asCode } from '../shared/asCode.ts';
import { type GymResult, isByNumber } from './compute.ts';
import type { GymInput } from './fields.ts';
import { countedAs, headlineOf } from './headlineOf.ts';

/** The same loads with the library. */
export function snippet(input: GymInput, result: GymResult): string {
  const { equipment, use, list, chosen } = result;
  const { exact } = headlineOf(input, result);
  const gym = `const gym = reachableLoads(
  ${asCode(equipment, '  ')},
  ${asCode(use, '  ')},
);
if (gym.kind === 'none') throw new Error(gym.message);
`;
  if (chosen === null) {
    return `import { reachableLoads } from '@windlass/core/equipment';
import { toKg } from '@windlass/core/load';

${gym}
for (const { shown, load } of gym.loads) console.log(toKg(shown), toKg(load));
console.log(gym.loads.length); // ${exact}
`;
  }
  const convert = input.show === 'kg' ? 'toKg' : 'toLb';
  if (isByNumber(input, list)) {
    const count = countedAs(input, result) === null ? 'shown' : 'load';
    return `import { reachableLoads } from '@windlass/core/equipment';
import { kg, ${convert} } from '@windlass/core/load';

${gym}
const row = gym.loads.find(({ shown }) => shown === kg(${toKg(chosen.load.shown)}));
if (!row) throw new Error('no such number');
console.log(row.loading);
console.log(${convert}(row.${count})); // ${exact}
`;
  }
  return `import { nearestLoad, reachableLoads } from '@windlass/core/equipment';
import { loadFromValue, ${convert} } from '@windlass/core/load';

${gym}
const choice = nearestLoad(gym, loadFromValue(${asCode(input.target)}));
if (choice.kind === 'none') throw new Error(choice.message);
console.log(choice.chosen.loading);
console.log(${convert}(choice.chosen.shown)); // ${exact}
`;
}
