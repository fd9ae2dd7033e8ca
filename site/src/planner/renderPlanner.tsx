import { renderToString } from 'preact-render-to-string';
import { PlannerApp } from './PlannerApp.tsx';
import { startPlan } from './startPlan.ts';
import { firstExample } from './state/examples.ts';
import { readDraft } from './state/readDraft.ts';

/** The planner as it is served. */
export interface ServedPlanner {
  /** Static HTML with the plan that the page opens with: no script, no style attribute. */
  readonly markup: string;
  /** That plan as JSON, so that the page need not plan again what it shows already. */
  readonly start: string;
}

/** Renders the planner. Throws where the example it opens with has a mistake, so that no page is built. */
export function renderPlanner(): ServedPlanner {
  const read = readDraft(firstExample);
  if (!read.ok) {
    throw new RangeError(`renderPlanner: the first example: ${read.problems[0]?.message}`);
  }
  const start = startPlan(read.value);
  return {
    markup: renderToString(<PlannerApp start={start} />),
    start: JSON.stringify(start),
  };
}
