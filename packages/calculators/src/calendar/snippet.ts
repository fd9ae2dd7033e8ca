import { sessionKinds } from '../precomputed/sessionKinds.ts';
import { asCode, codeLine } from '../shared/asCode.ts';
import type { CalendarResult } from './compute.ts';
import type { CalendarInput, SessionRow } from './fields.ts';
import { hoursOptions, lightMannerOf, lightMinutes, mannerOf, OWN_GYM } from './sessionsOf.ts';

/** The same plan with the library. */
export function snippet(input: CalendarInput, { request, plan }: CalendarResult): string {
  const { sessions, ...rest } = request;
  const rows = sessions.map(({ name }, place) => sessionCode(input.sessions[place], place, name));
  const others = Object.entries(rest).map(([key, value]) => `  ${key}: ${asCode(value, '  ')},\n`);
  return `import { findExercise } from '@windlass/core/anatomy';
import { muscleHours, planCalendar, type TrainedSets } from '@windlass/core/recovery';

const hours = (ids: readonly string[], manner: Omit<TrainedSets, 'exercise'>) => {
  const work = ids.map((id) => {
    const found = findExercise(id);
    if (found.kind === 'unknown') throw new Error(\`no exercise \${id}\`);
    return { ...manner, exercise: found.exercise };
  });
  return muscleHours(work, ${codeLine(hoursOptions(input))});
};
const plan = planCalendar({
${others.join('')}  sessions: [
${rows.join('')}  ],
});
if (plan.kind !== 'planned') throw new Error(plan.message);
for (const { start, name, light } of plan.sessions) console.log(start, name, light);
console.log(plan.sessions.length); // ${plan.sessions.length}
`;
}

function sessionCode(row: SessionRow | undefined, place: number, name: string): string {
  if (row === undefined) return '';
  const ids = codeLine((sessionKinds[row.trains] ?? []).map(({ id }) => id));
  const gyms = row.place === 'own' ? `      gyms: ${codeLine([OWN_GYM])},\n` : '';
  return `    {
      id: '${place + 1}',
      name: ${codeLine(name)},
      minutes: ${row.minutes},
      muscles: hours(${ids}, ${codeLine(mannerOf(row))}),
      light: {
        minutes: ${lightMinutes(row)},
        muscles: hours(${ids}, ${codeLine(lightMannerOf(row))}),
      },
${gyms}    },
`;
}
