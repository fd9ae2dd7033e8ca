import type { Problem } from '@windlass/core/basis';
import { useCallback, useEffect, useMemo, useReducer, useState } from 'preact/hooks';
import type { Planned } from './state/planFrom.ts';
import { plannerReducer, startState } from './state/plannerState.ts';
import type { Json, Path } from './state/tree.ts';
import { words } from './words.ts';

/** What the page knows: the draft, the last plan that could be made, and whether it is of now. */
export interface Planner {
  readonly draft: Json;
  readonly shown: Planned;
  /** Why the draft cannot be planned from; then what is shown is of an earlier one. */
  readonly problems: readonly Problem[];
  readonly canUndo: boolean;
  readonly set: (path: Path, value: Json | undefined) => void;
  readonly change: (to: (draft: Json) => Json) => void;
  readonly undo: () => void;
  /** Begins with another draft, with nothing to go back to. */
  readonly begin: (draft: Json) => void;
}

/**
 * What reads a draft and plans from it is larger than the page itself, which arrives with its first
 * plan: it is fetched when the page is first used.
 */
export const fetchPlanning = () => import('./state/planDraft.ts');

const NONE: readonly Problem[] = [];

/**
 * The state of the page. A change of the draft is shown at once; the plan follows when the browser
 * has painted that, so that typing never waits for it.
 */
export function usePlanner(start: Planned): Planner {
  const [state, dispatch] = useReducer(plannerReducer, startState(start.draft));
  const [{ shown, problems }, setAnswer] = useState({ shown: start, problems: NONE });
  const { draft } = state;

  useEffect(() => {
    if (draft === start.draft && shown === start) return;
    return afterPaint(async (isWanted) => {
      const answer = await answerTo(draft);
      if (isWanted()) setAnswer((before) => ({ ...before, ...answer }));
    });
  }, [draft]);

  const set = useCallback(
    (path: Path, value: Json | undefined) => dispatch({ kind: 'set', path, value }),
    [],
  );
  const change = useCallback((to: (before: Json) => Json) => dispatch({ kind: 'change', to }), []);
  const undo = useCallback(() => dispatch({ kind: 'undo' }), []);
  const begin = useCallback((other: Json) => dispatch({ kind: 'start', draft: other }), []);
  const canUndo = state.past.length > 0;
  return useMemo(
    () => ({ draft, shown, problems, canUndo, set, change, undo, begin }),
    [draft, shown, problems, canUndo, set, change, undo, begin],
  );
}

interface Answer {
  /** Left out where the one before stays. */
  readonly shown?: Planned;
  readonly problems: readonly Problem[];
}

/** The plan of a draft, or why there is none; whatever goes wrong, the plan before is marked as old. */
async function answerTo(draft: Json): Promise<Answer> {
  try {
    const { planDraft } = await fetchPlanning();
    const plan = planDraft(draft);
    return plan.ok ? { shown: plan.value, problems: NONE } : { problems: plan.problems };
  } catch (error) {
    const message = words.notPlanned(error instanceof Error ? error.message : String(error));
    return { problems: [{ code: 'planner.not-planned', path: [], message }] };
  }
}

/** Runs once the browser has painted what is there now; the result takes it back. */
function afterPaint(run: (isWanted: () => boolean) => void): () => void {
  let isWanted = true;
  const frame = requestAnimationFrame(() => setTimeout(() => isWanted && run(() => isWanted)));
  return () => {
    isWanted = false;
    cancelAnimationFrame(frame);
  };
}
