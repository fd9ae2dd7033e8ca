import { asCode, codeLine } from '../shared/asCode.ts';
import type { ExchangeResult } from './compute.ts';
import type { ExchangeInput } from './fields.ts';
import { askedOf, contextOf, positionsOf, settingOf } from './setting.ts';

/** The same exchange with the library. */
export function snippet(input: ExchangeInput, { setUps, others }: ExchangeResult): string {
  const isExercise = input.wanted === 'exercise';
  const verb = isExercise ? 'exchangeFor' : 'exercisesFor';
  const { atHand, alone, stops, toFailure } = settingOf(input);
  const isFull = input.place === 'full';
  const extra = positionsOf(input);
  const limits =
    extra.length === 0
      ? 'limits'
      : `{\n  ...limits,\n  positions: [...limits.positions, ...${asCode(extra, '  ')}],\n}`;
  return `${isExercise ? "import { findExercise } from '@windlass/core/anatomy';\n" : ''}import { ${isFull ? `${verb}, fullGym` : `type AtHand, ${verb}`} } from '@windlass/core/exchange';
import { limitsFor } from '@windlass/core/safety';

${isExercise ? `const found = findExercise('${input.exercise}');\nif (found.kind === 'unknown') throw new Error('no such exercise');\n` : ''}const limits = limitsFor(
  ${asCode(askedOf(input), '  ')},
  ${codeLine(contextOf(input))},
);
${isFull ? '' : `const atHand: AtHand = ${asCode(atHand)};\n`}
const answer = ${verb}(${isExercise ? 'found.exercise' : `'${input.wanted}'`}, {
  limits${extra.length === 0 ? '' : `: ${limits.replaceAll('\n', '\n  ')}`},
  ${isFull ? 'atHand: fullGym' : 'atHand'},
  alone: ${alone === true},
  stops: ${stops === true},
  toFailure: ${toFailure === true},
});
if (answer.kind !== 'options') throw new Error(answer.kind);

const options = ${isExercise ? '[...answer.setUps, ...answer.others]' : 'answer.suggestions'};
for (const { exercise, setUps, reasonsFor, reasonsAgainst } of options) {
  console.log(exercise.name, setUps, reasonsFor, reasonsAgainst);
}
console.log(options.length); // ${setUps.length + others.length}
`;
}
