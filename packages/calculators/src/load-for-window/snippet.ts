import type { ReachableLoad } from '@windlass/core/equipment';
import { type LoadValue, toKg } from '@windlass/core/load';
import { formatTempo } from '@windlass/core/tempo';
import { asCode, codeLine } from '../shared/asCode.ts';
import { gearOf } from '../shared/gearFields.ts';
import { ratioOf } from '../shared/gearLoad.ts';
import { loadFace } from '../shared/loadWords.ts';
import type { WindowInput, WindowResult } from './compute.ts';

/** The same load with the library. */
export function snippet(input: WindowInput, { sets, answer, choices }: WindowResult): string {
  const { equipment, use } = gearOf(input);
  const convert = input.show === 'kg' ? 'toKg' : 'toLb';
  const ratio = ratioOf(input);
  const loadCode = (load: LoadValue) =>
    ratio === 1
      ? `loadFromValue(${asCode(load)})`
      : `scaleLoad(loadFromValue(${asCode(load)}), 1, ${ratio})`;
  const ordered = [...input.sets].sort((a, b) => b.daysAgo - a.daysAgo);
  const setLines = sets.map(({ load: _, ...set }, at) => {
    const row = ordered[at]?.load ?? { value: 0, unit: 'kg' as const };
    return `  { load: ${loadCode(row)}, ${codeLine(set).slice(2)},`;
  });
  const [first, last] = [choices.loads[0], choices.loads.at(-1)];
  const pieces = choices.mostPieces === null ? '' : ` && loading.pieces <= ${choices.mostPieces}`;
  return `import { reachableLoads } from '@windlass/core/equipment';
import { kg, loadFromValue, ${ratio === 1 ? '' : 'scaleLoad, '}${convert} } from '@windlass/core/load';
import { generalCurve, loadForWindow, type PerformedSet, priorFor, strengthFrom } from '@windlass/core/strength';
import { parseTempo, secondsPerRep } from '@windlass/core/tempo';

const sets: readonly PerformedSet[] = [
${setLines.join('\n')}
];
const posterior = strengthFrom({ sets, prior: priorFor(generalCurve), today: 0 });
const tempo = parseTempo('${formatTempo(input.tempo)}');
const gym = reachableLoads(
  ${asCode(equipment, '  ')},
  ${asCode(use, '  ')},
);
if (posterior.kind !== 'posterior' || !tempo.ok || gym.kind === 'none') throw new Error('no answer');

const answer = loadForWindow({
  posterior,
  choices: gym.loads.filter(
    ({ load${pieces === '' ? '' : ', loading'} }) => load >= kg(${kgOf(first)}) && load <= kg(${kgOf(last)})${pieces},
  ),
  window: { minReps: ${input.window.low}, maxReps: ${input.window.high} },
  secondsPerRep: secondsPerRep(tempo.value.tempo),
});
if (answer.kind !== 'found') throw new Error(answer.kind);
console.log(answer.best.inside, answer.best.reps);
console.log(${convert}(answer.best.choice.shown)); // ${loadFace(answer.best.choice.shown, input.show).exact}
`;
}

function kgOf(choice: ReachableLoad | undefined): number {
  return choice ? toKg(choice.load) : 0;
}
