import { formatTempo } from '@windlass/core/tempo';
import { asCode, codeLine } from '../shared/asCode.ts';
import type { PairResult } from './compute.ts';
import { exactOf } from './exactOf.ts';
import type { PairInputs } from './fields.ts';

/** The same pair with the library. */
export function snippet(input: PairInputs, { question, forecast }: PairResult): string {
  const { target, limiting = [], isolation, compound, start } = question;
  const isLoad = input.ask === 'load';
  const imports =
    isLoad && input.show === 'lb' ? 'loadFromValue, STEPS_PER_KG, STEPS_PER_LB' : 'loadFromValue';
  return `import { findExercise } from '@windlass/core/anatomy';
import { ${imports} } from '@windlass/core/load';
import { planPair } from '@windlass/core/pairing';
import { parseTempo, secondsPerRep } from '@windlass/core/tempo';

const first = findExercise('${input.isolation}');
const second = findExercise('${input.compound}');
const tempos = ['${formatTempo(input.isolationTempo)}', '${formatTempo(input.compoundTempo)}'].map((text) => parseTempo(text));
if (first.kind === 'unknown' || second.kind === 'unknown') throw new Error('no such exercise');
const [firstPace = 0, secondPace = 0] = tempos.map((read) => (read.ok ? secondsPerRep(read.value.tempo) : 0));

const plan = planPair({
  target: ${codeLine(target)},
  limiting: ${codeLine(limiting)},
  isolation: {
    exercise: first.exercise,
    reps: ${isolation.reps},
    repsLeft: ${isolation.repsLeft},
    secondsPerRep: firstPace,
  },
  compound: {
    exercise: second.exercise,
    usual: { load: loadFromValue(${codeLine(input.usualLoad)}), reps: ${compound.usual.reps} },
    secondsPerRep: secondPace,
  },
  transitionSeconds: ${question.transitionSeconds},${start ? `\n  start: ${asCode(quoted(start), '  ')},` : ''}
});
if (plan.kind === 'refused') throw new Error(plan.refusals[0]?.why);
console.log(plan.loadShare, plan.repsAtUsualLoad);
console.log(${isLoad ? loadCode(input) : 'plan.repsAtUsualLoad.likely'}); // ${exactOf(input, forecast)}
`;
}

function loadCode({ show }: PairInputs): string {
  return show === 'kg'
    ? 'plan.loadKg.likely'
    : '(plan.loadKg.likely * STEPS_PER_KG) / STEPS_PER_LB';
}

/** Names of muscles have hyphens, so they stand in quotes as keys. */
function quoted(state: object): object {
  return Object.fromEntries(Object.entries(state).map(([key, value]) => [`'${key}'`, value]));
}
