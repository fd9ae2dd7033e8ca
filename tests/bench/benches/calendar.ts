import highsLoader from 'highs';
import { planCalendar } from '../../../packages/core/src/recovery/index.ts';
import {
  calendarRequest,
  rotations,
  weeks,
} from '../../../packages/core/src/recovery/oracle/calendarCases.ts';
import { calendarProgram } from '../../../packages/core/src/recovery/oracle/calendarProgram.ts';
import { calendarQuestion } from '../../../packages/core/src/recovery/oracle/calendarQuestion.ts';
import type { Bench, Ratio } from '../Benchmark.ts';
import { fastest, fastestOf, times, written } from '../timing.ts';

/** Most sessions on open hours, no muscle before it is ready, beside the integer solver. */
export const calendar: Bench = {
  id: 'calendar',
  title: 'As many sessions as the hours and the muscles allow',
  run: async ({ quick }) => {
    const highs = await highsLoader();
    const lines: string[] = [];
    const ratios: Ratio[] = [];
    for (const days of quick ? [14] : [14, 21, 28]) {
      const requests = weeks.flatMap((week) =>
        rotations.map((rotation) => calendarRequest(week.days, rotation, 'as-listed', days)),
      );
      const programs = requests.map((request) => calendarProgram(calendarQuestion(request)));
      const most = programs.map((program) => Math.round(highs.solve(program).ObjectiveValue));
      for (const [index, request] of requests.entries()) {
        const plan = planCalendar(request);
        const placed = plan.kind === 'planned' ? plan.sessions.length : 0;
        if (placed !== most[index]) throw new Error(`calendar ${index} differs`);
      }
      const solve = () => {
        for (const program of programs) highs.solve(program);
      };
      const solver = fastestOf(5, solve);
      const ours = fastest(() => {
        for (const request of requests) planCalendar(request);
      });
      const count = requests.length;
      lines.push(
        `${days} days, ${count} calendars: ${written(ours / count)} against ${written(solver / count)} each, ${times(solver / ours)} as fast`,
      );
      ratios.push({ id: `calendar/${days}-days`, value: solver / ours });
    }
    return { lines, ratios };
  },
};
