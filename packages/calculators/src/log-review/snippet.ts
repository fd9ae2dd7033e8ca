import { writeLogCsv } from '@windlass/core/progress';
import { asCode, codeLine } from '../shared/asCode.ts';
import { loadFace } from '../shared/loadWords.ts';
import type { LogReviewResult } from './compute.ts';
import type { LogReviewInput } from './fields.ts';
import { said } from './words.ts';

/** The same next load with the library, from the sets that it comes from. */
export function snippet(input: LogReviewInput, result: LogReviewResult): string {
  const { known, lift, evidence, gear, context, beliefs, question, advice } = result;
  const { window, show } = input;
  const convert = show === 'kg' ? 'toKg' : 'toLb';
  const csv = writeLogCsv(evidence)
    .replaceAll('\r\n', '\n')
    .trim()
    .replace(/[\\`$]/g, '\\$&');
  const { bodyWeight } = input;
  const contexts = [
    ...(bodyWeight ? [`bodyWeight: loadFromValue(${codeLine(bodyWeight)})`] : []),
    ...(context.movedShare ? [`movedShare: ${codeLine(context.movedShare)}`] : []),
    ...(context.machine ? ['machine: loads'] : []),
  ];
  const pace =
    beliefs.paceSeconds === undefined ? '' : `\n  secondsPerRep: ${beliefs.paceSeconds},`;
  const hours =
    question.hoursNeeded === undefined ? '' : `\n  hoursNeeded: ${question.hoursNeeded},`;
  const loads = [...(bodyWeight ? ['loadFromValue'] : []), convert];
  return `${known ? `import { findExercise } from '@windlass/core/anatomy';\n` : ''}import { reachableLoads } from '@windlass/core/equipment';
import { ${loads.join(', ')} } from '@windlass/core/load';
import { liftSessions, nextLoad, performedSets, readLogCsv, setAsideTags } from '@windlass/core/progress';
import { dayNumber } from '@windlass/core/recovery';
import { ${known ? 'enduranceCurves' : 'generalCurve'}, priorFor, strengthAfter, strengthFrom } from '@windlass/core/strength';

const { sets: log } = readLogCsv(\`${csv}\`);
const equipment = ${asCode(gear.equipment)} as const;
const loads = reachableLoads(equipment, ${asCode(gear.use)});
const { sessions } = liftSessions(log, ${codeLine(lift)}, { ${contexts.join(', ')} });
${known ? knownCode(lift) : UNKNOWN_CODE}const own = sessions.filter(({ tags }) => !tags.some((tag) => setAsideTags.includes(tag)));
const sets = performedSets(own, { exercise, curve });
const prior = priorFor(curve);
const today = dayNumber('${input.on}');
const last = own.at(-1)?.day ?? today;
const latest = sets.filter(({ day }) => day === last);
const before = strengthFrom({ sets: sets.filter(({ day }) => day !== last), prior, today: last });
const belief =
  before.kind === 'posterior'
    ? strengthAfter(before, { sets: latest, today })
    : strengthFrom({ sets: latest, prior, today });
const advice = nextLoad({
  sessions,
  window: { minReps: ${window.low}, maxReps: ${window.high} },
  repsInReserve: ${input.reserve},
  equipment,
  loads,
  on: '${input.on}',
  curve,${pace}${hours}
  ...(belief.kind === 'posterior' ? { posterior: belief } : {}),
});
console.log(advice.kind); // ${advice.kind}
${loadCode(advice.kind)}console.log(${convert}(load.shown)); // ${loadFace(advice.load.shown, show).exact}
`;
}

function loadCode(kind: LogReviewResult['advice']['kind']): string {
  return kind === 'come-back'
    ? `if (advice.kind !== 'come-back' || advice.comeback.kind === 'no-load') throw new Error('${said.none}');
const load = advice.comeback.start;
`
    : `if (!('load' in advice)) throw new Error(advice.kind);
const { load } = advice;
`;
}

function knownCode(id: string): string {
  return `const found = findExercise('${id}');
if (found.kind === 'unknown') throw new Error('no such exercise');
const { exercise } = found;
const curve = enduranceCurves[exercise.endurance];
`;
}

/** One muscle stands for a lift whose muscles are not known. */
const UNKNOWN_CODE = `const exercise = { direct: { lats: 1 }, indirect: {} };
const curve = generalCurve;
`;
