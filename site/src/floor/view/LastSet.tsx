import type { DoneSet } from '../run/FloorState.ts';
import { words } from '../words.ts';
import { useFloor } from './FloorContext.ts';
import { standingOf } from './standingOf.ts';

/** What the set before this one gave, against what was expected of it. */
export function LastSet({ onPutRight }: { readonly onPutRight: (step: number) => void }) {
  const { session, state } = useFloor();
  const done = state.last === null ? undefined : state.done.get(state.last);
  const step = done && session.steps[done.step];
  const lift = step && session.lifts[step.lift];
  if (!done || !step || !lift || step.kind === 'warm-up') return null;
  const standing = standingOf(done, step, lift);
  return (
    <p class="floor-last">
      <span>
        {words.last.title}: <strong>{doneWords(done)}</strong>
        {standing && `, ${words.standing[standing]}`}
      </span>
      <button type="button" class="wl-button" onClick={() => onPutRight(done.step)}>
        {words.last.put}
      </button>
    </p>
  );
}

/** `9 reps, then failed`. */
export function doneWords({ reps, end, sign, pastFailure }: DoneSet): string {
  const { last } = words;
  const ending = sign !== undefined ? last.sign : endWords(end);
  const after = pastFailure && pastFailure.note !== '' ? [pastFailure.note] : [];
  return [last.reps(reps), ending, ...after].join(', ');
}

function endWords(end: DoneSet['end']): string {
  const { last } = words;
  if (!end) return last.unknown;
  if (end.kind === 'failure') return last.failure;
  return end.kind === 'reserve' ? last.reserve(end.repsLeft) : last.more(end.atLeast);
}
