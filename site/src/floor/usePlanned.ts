import { useEffect, useState } from 'preact/hooks';
import type { Planned } from '../planner/state/planFrom.ts';
import type { Json } from '../planner/state/tree.ts';
import { fetchDesk } from './later.ts';

/** The plan behind a session, worked out beside the page once it is wanted; `null` until then. */
export function usePlanned(plan: Json, isWanted: boolean): Planned | null {
  const [made, setMade] = useState<{ readonly plan: Json; readonly planned: Planned } | null>(null);
  useEffect(() => {
    if (!isWanted || made?.plan === plan) return;
    fetchDesk().then(
      ({ openPlan }) => {
        const opened = openPlan(plan);
        if (opened.kind === 'session') setMade({ plan, planned: opened.planned });
      },
      // Without a network it is tried again when it is wanted next.
      () => {},
    );
  }, [plan, isWanted]);
  return made?.plan === plan ? made.planned : null;
}
