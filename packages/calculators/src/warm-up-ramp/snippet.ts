import { toKg } from '@windlass/core/load';
import { asCode } from '../shared/asCode.ts';
import { type RampInput, type RampResult, rampQuestion } from './compute.ts';

/** The same ramp with the library. */
export function snippet(input: RampInput, { plan, work }: RampResult): string {
  const { work: _, workShare: __, equipment, use, ...rest } = rampQuestion(input, work);
  return `import { kg, toKg } from '@windlass/core/load';
import { shareForReps } from '@windlass/core/strength';
import { planRamp } from '@windlass/core/warmup';

const plan = planRamp({
  equipment: ${asCode(equipment, '  ')},
  use: ${asCode(use, '  ')},
  work: kg(${toKg(work.load)}),
  workShare: Math.max(0.2, shareForReps(${input.possible})),
${Object.entries(rest)
  .map(([name, value]) => `  ${name}: ${asCode(value)},`)
  .join('\n')}
});
if (plan.kind !== 'ramp') throw new Error(plan.message);
for (const { load, reps, restSeconds } of plan.steps) {
  console.log(toKg(load.shown), reps, restSeconds);
}
console.log(plan.steps.length); // ${plan.steps.length}
`;
}
