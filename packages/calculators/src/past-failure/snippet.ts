import { formatTempo } from '@windlass/core/tempo';
import { asCode, codeLine } from '../shared/asCode.ts';
import { askedOf, type ChainResult, SEED } from './compute.ts';
import type { ChainInput } from './fields.ts';

/** The same chain with the library. */
export function snippet(input: ChainInput, { stages, intensity, forecast }: ChainResult): string {
  const { client, context } = askedOf(input);
  return `import { findExercise } from '@windlass/core/anatomy';
import { forecastChain, planChain, type Stage } from '@windlass/core/extension';
import { limitsFor } from '@windlass/core/safety';
import { enduranceCurves } from '@windlass/core/strength';
import { parseTempo, secondsPerRep } from '@windlass/core/tempo';

const found = findExercise('${input.exercise}');
const tempo = parseTempo('${formatTempo(input.tempo)}');
if (found.kind === 'unknown' || !tempo.ok) throw new Error('no answer');
const { exercise } = found;

const stages: readonly Stage[] = ${asCode(stages)};
const plan = planChain(stages, {
  exercise,
  partner: ${input.company === 'partner'},
  stops: ${input.stops === 'yes'},
  switchedOn: ${input.switchedOn === 'yes'},
  limits: limitsFor(
    ${asCode(client, '    ')},
    ${codeLine(context)},
  ),
});
if (plan.kind === 'refused') throw new Error(plan.refusals[0]?.why);

const forecast = forecastChain({
  stages,
  exercise,
  intensity: ${intensity},
  secondsPerRep: secondsPerRep(tempo.value.tempo),
  curve: enduranceCurves[exercise.endurance],
  seed: ${SEED},
});
for (const { stage, count, secondsUnderLoad } of forecast.stages) {
  console.log(stage.kind, count, secondsUnderLoad);
}
console.log(forecast.secondsUnderLoad.likely); // ${forecast.secondsUnderLoad.likely}
`;
}
