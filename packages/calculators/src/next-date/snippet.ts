import { asCode, codeLine } from '../shared/asCode.ts';
import type { NextDateResult } from './compute.ts';
import type { NextDateInput } from './fields.ts';
import { workParts } from './workOf.ts';

/** The same date with the library. */
export function snippet(input: NextDateInput, { start, options, reports, ready }: NextDateResult) {
  const work = workParts(input).map(
    (part, place) =>
      `    { exercise: lift('${input.work[place]?.exercise}'), ${codeLine(part).slice(2)},\n`,
  );
  const next = input.next.map(({ exercise }) => `  { exercise: lift('${exercise}'), sets: 1 },\n`);
  const names = [
    ...(reports.length > 0 ? ['learnRecovery'] : []),
    ...(next.length > 0 ? ['muscleDose'] : []),
    'readiness',
    'wallTimeAfter',
  ];
  const { soreness = {}, shortNights } = options.reports ?? {};
  const sore = Object.fromEntries(
    Object.entries(soreness).map(([muscle, how]) => [`'${muscle}'`, how]),
  );
  const filter = next.length > 0 ? '.filter(({ muscle }) => next.includes(muscle))' : '';
  return `import { findExercise } from '@windlass/core/anatomy';
import { ${names.join(', ')} } from '@windlass/core/recovery';

const lift = (id: string) => {
  const found = findExercise(id);
  if (found.kind === 'unknown') throw new Error(\`no exercise \${id}\`);
  return found.exercise;
};
const session = {
  hoursAgo: 0,
  work: [
${work.join('')}  ],
};
const muscles = readiness([session], {
  status: '${input.status}',
  reports: ${codeLine({ soreness: sore, shortNights })},${
    reports.length > 0 ? `\n  habit: learnRecovery(${asCode(reports, '  ')}),` : ''
  }
});
${
  next.length > 0
    ? `const next = muscleDose([\n${next.join('')}]).map(({ muscle }) => muscle);\n`
    : ''
}const hours = Math.max(...muscles${filter}.map(({ readyIn }) => readyIn.likely));
console.log(wallTimeAfter('${start}', hours, '${input.zone}'));
console.log(hours); // ${ready.likely}
`;
}
