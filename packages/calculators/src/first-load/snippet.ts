import { toKg } from '@windlass/core/load';
import { formatTempo } from '@windlass/core/tempo';
import { asCode, codeLine } from '../shared/asCode.ts';
import { gearOf } from '../shared/gearFields.ts';
import { ratioOf } from '../shared/gearLoad.ts';
import { curveCode } from '../shared/liftField.ts';
import { loadFace } from '../shared/loadWords.ts';
import { type FirstLoadResult, loadOf, reportOf } from './compute.ts';
import type { FirstLoadInput } from './fields.ts';

/** The same step with the library. */
export function snippet(input: FirstLoadInput, { step, trial }: FirstLoadResult): string {
  const { equipment, use } = gearOf(input);
  const { lift, window, tries, tempo, show } = input;
  const convert = show === 'kg' ? 'toKg' : 'toLb';
  const curve = curveCode(lift);
  const ratio = ratioOf(input);
  const lines = tries.map(({ load, reps, felt }) => {
    const written = `loadFromValue(${codeLine(load)})`;
    const moved = ratio === 1 ? written : `scaleLoad(${written}, 1, ${ratio})`;
    return `    { load: ${moved}, reps: ${reps}, report: ${codeLine(reportOf(felt))} },\n`;
  });
  const uses = [
    'kg',
    ...(lines.length > 0 ? ['loadFromValue'] : []),
    ...(lines.length > 0 && ratio !== 1 ? ['scaleLoad'] : []),
    convert,
  ];
  const pieces = trial.mostPieces === null ? '' : ` && loading.pieces <= ${trial.mostPieces}`;
  const lightest = toKg(trial.loads[0].load);
  const heaviest = toKg(trial.heaviest);
  return `import { reachableLoads } from '@windlass/core/equipment';
import { ${uses.join(', ')} } from '@windlass/core/load';
import { ${curve.name}, findingProtocol } from '@windlass/core/strength';
import { parseTempo, secondsPerRep } from '@windlass/core/tempo';

const tempo = parseTempo('${formatTempo(tempo)}');
const gym = reachableLoads(
  ${asCode(equipment, '  ')},
  ${asCode(use, '  ')},
);
if (!tempo.ok || gym.kind === 'none') throw new Error('no answer');

const step = findingProtocol({
  choices: gym.loads.filter(
    ({ load${pieces === '' ? '' : ', loading'} }) => load === kg(${lightest}) || (load <= kg(${heaviest})${pieces}),
  ),
  window: { minReps: ${window.low}, maxReps: ${window.high} },
  secondsPerRep: secondsPerRep(tempo.value.tempo),
  curve: ${curve.code},
  tries: [${lines.length > 0 ? `\n${lines.join('')}  ` : ''}],
});
if (step.kind === 'no-loads' || step.kind === 'all-too-heavy') throw new Error(step.kind);
const next = step.kind === 'try' ? step.choice : step.load.choice;
console.log(step.kind, next.loading);
console.log(${convert}(next.shown)); // ${loadFace(loadOf(step).shown, show).exact}
`;
}
