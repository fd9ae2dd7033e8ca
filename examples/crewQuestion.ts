import { fileURLToPath } from 'node:url';
import type { SessionQuestion } from '@windlass/core/session';
import { readPlanFile } from './readPlanFile.ts';

/** What is planned for everyone: a session from a history of sets, or a first one that finds its loads. */
export type Workload = 'from-history' | 'first-session';

const files = { 'from-history': 'pull-day.json', 'first-session': 'first-day.json' } as const;

/** A question for each member of a crew, by number: their weight, counts and rests differ. */
export function crewQuestion(workload: Workload): (member: number) => SessionQuestion {
  const path = fileURLToPath(new URL(`boathouse/${files[workload]}`, import.meta.url));
  const read = readPlanFile(path);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join(' '));
  const { client, gym, intent } = read.value;
  return (member) => ({
    gym,
    client: {
      ...client,
      name: `Crew member ${member}`,
      bodyWeight: { value: 55 + (member % 67), unit: 'kg' },
      sets: client.sets.map((set, index) => ({
        ...set,
        reps: Math.max(1, set.reps + ((member + index) % 5) - 2),
      })),
    },
    intent: {
      ...intent,
      lifts: intent.lifts.map((lift) => ({ ...lift, restSeconds: 90 + (member % 61) })),
    },
  });
}
