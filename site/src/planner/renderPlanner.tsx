import { renderToString } from 'preact-render-to-string';
import { PlannerApp } from './PlannerApp.tsx';
import { startPlan } from './startPlan.ts';
import { firstExample } from './state/examples.ts';
import { readDraft } from './state/readDraft.ts';

/** The planner as it is served. */
export interface ServedPlanner {
  /** Static HTML with the plan that the page opens with: no script, no style attribute. */
  readonly markup: string;
  /** What that plan is made from, as JSON: already read, so that the page need not read it again. */
  readonly question: string;
}

/** Renders the planner. Throws where the example it opens with has a mistake, so that no page is built. */
export function renderPlanner(): ServedPlanner {
  const read = readDraft(firstExample);
  if (!read.ok) {
    throw new RangeError(`renderPlanner: the first example: ${read.problems[0]?.message}`);
  }
  return {
    markup: renderToString(<PlannerApp {...startPlan(read.value)} />),
    question: JSON.stringify(read.value),
  };
}
