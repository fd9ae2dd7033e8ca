import type { Why } from '../contract/Answer.ts';
import { formatWall } from '../ui/formatDate.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import type { CalendarResult } from './compute.ts';
import { muscleList } from './names.ts';
import { said } from './words.ts';

/** The hours that the sessions ask for, and the tightest place in the plan. */
export function whyPlan({ request, plan }: CalendarResult): Why {
  const hours = request.sessions.flatMap(({ name, muscles }) => {
    const [most] = Object.entries(muscles).toSorted(([, a], [, b]) => b - a);
    return most ? [said.hoursOf(name, muscleList([most[0]]), formatNumber(most[1], 1))] : [];
  });
  return {
    formula: said.formula,
    steps: [
      ...new Set([...hours, said.searched(request.startEveryMinutes ?? 30), ...tightest(plan)]),
    ],
    restsOn: said.restsOn,
  };
}

function tightest({ sessions }: CalendarResult['plan']): readonly string[] {
  const gaps = sessions.flatMap(({ name, start, gaps: [gap] }) =>
    gap ? [{ name, start, ...gap, margin: gap.hours - gap.hoursNeeded }] : [],
  );
  const [least] = gaps.toSorted((a, b) => a.margin - b.margin);
  if (least === undefined) return [];
  const words = said.tightest(
    muscleList([least.muscle]),
    least.name,
    formatWall(least.start),
    formatNumber(least.hours, 1),
    formatNumber(least.hoursNeeded, 1),
  );
  return [words];
}
