import { type Json, type Path, setAt } from './tree.ts';

/** What the page holds: what was typed and chosen, and what it was before. */
export interface PlannerState {
  readonly draft: Json;
  /** Earlier drafts, the latest last. */
  readonly past: readonly Json[];
  /** Place that the latest change was made at: typing on there is one step back, not many. */
  readonly lastPlace: string | null;
}

export type PlannerAction =
  /** One field changes; `undefined` takes it away. */
  | { readonly kind: 'set'; readonly path: Path; readonly value: Json | undefined }
  /** Several things change at once. */
  | { readonly kind: 'change'; readonly to: (draft: Json) => Json }
  /** Another draft takes the place of the first one before anything was changed. */
  | { readonly kind: 'start'; readonly draft: Json }
  | { readonly kind: 'undo' };

const MOST_STEPS = 100;

export function startState(draft: Json): PlannerState {
  return { draft, past: [], lastPlace: null };
}

/** The state after an action. Nothing that was typed is lost: every step can be taken back. */
export function plannerReducer(state: PlannerState, action: PlannerAction): PlannerState {
  const { draft, past, lastPlace } = state;
  if (action.kind === 'start') return startState(action.draft);
  if (action.kind === 'undo') {
    const before = past.at(-1);
    return before === undefined
      ? state
      : { draft: before, past: past.slice(0, -1), lastPlace: null };
  }
  const place = action.kind === 'set' ? action.path.join('/') : null;
  const next = action.kind === 'set' ? setAt(draft, action.path, action.value) : action.to(draft);
  if (JSON.stringify(next) === JSON.stringify(draft)) return state;
  const isSameField = place !== null && place === lastPlace;
  return {
    draft: next,
    past: isSameField ? past : [...past, draft].slice(-MOST_STEPS),
    lastPlace: place,
  };
}
