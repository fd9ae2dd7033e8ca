import { toKg } from '@windlass/core/load';
import { codeLine } from '../shared/asCode.ts';
import { curveCode } from '../shared/liftField.ts';
import type { StrengthResult } from './compute.ts';
import type { StrengthInput } from './fields.ts';
import { LEVELS, maxFace } from './maxFace.ts';

/** The same belief with the library. */
export function snippet(input: StrengthInput, result: StrengthResult): string {
  const { sets, body } = result;
  const { as, end, value } = maxFace(input, result);
  const curve = curveCode(input.lift);
  const isPounds = input.show === 'lb';
  const lines = sets.map(
    ({ load, ...set }) => `  { load: kg(${toKg(load)}), ${codeLine(set).slice(2)},\n`,
  );
  const written = body === null ? end : `(${end} - ${toKg(body)})`;
  const level = end === 'likely' ? '' : `, ${LEVELS[end]}`;
  const inUnit = isPounds ? `(${written} * STEPS_PER_KG) / STEPS_PER_LB` : written;
  return `import { kg${isPounds ? ', STEPS_PER_KG, STEPS_PER_LB' : ''} } from '@windlass/core/load';
import {
  ${curve.name},
  kappaBand,
  oneRepMaxKg,
  type PerformedSet,
  priorFor,
  setContributions,
  strengthFrom,
} from '@windlass/core/strength';

const sets: readonly PerformedSet[] = [
${lines.join('')}];
const evidence = { sets, prior: priorFor(${curve.code}), today: 0 };
const belief = strengthFrom(evidence);
if (belief.kind !== 'posterior') throw new Error(belief.kind);
for (const { expected, narrowed, disagrees } of setContributions(evidence)) {
  console.log(expected, narrowed, disagrees);
}
console.log(kappaBand(belief));
const { ${end} } = oneRepMaxKg(belief${level});
console.log(${as === 'help' ? `-(${inUnit})` : inUnit}); // ${value}
`;
}
