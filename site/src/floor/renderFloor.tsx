import { renderToString } from 'preact-render-to-string';
import { firstExample } from '../planner/state/examples.ts';
import { FloorApp } from './FloorApp.tsx';
import { openPlan } from './session/openPlan.ts';

/** The floor page as it is served. */
export interface ServedFloor {
  /** Static HTML of the demonstration: no script, no style attribute. */
  readonly markup: string;
  /** The session in it, as JSON, so that the page need not plan it again. */
  readonly session: string;
}

/** Renders the floor page. Throws where the demonstration has a mistake, so that no page is built. */
export function renderFloor(): ServedFloor {
  const opened = openPlan(firstExample);
  if (opened.kind === 'wrong') throw new RangeError(`renderFloor: ${opened.message}`);
  const { session } = opened;
  return {
    markup: renderToString(<FloorApp served={session} />),
    session: JSON.stringify(session),
  };
}
