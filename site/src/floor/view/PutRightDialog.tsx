import { words } from '../words.ts';
import { Endings } from './AskingView.tsx';
import { Dialog } from './Dialog.tsx';
import { useFloor } from './FloorContext.ts';
import { doneWords } from './LastSet.tsx';

/** A set that is done is put right: its count, and how it ended. */
export function PutRightDialog({
  step,
  onClose,
}: {
  readonly step: number;
  readonly onClose: () => void;
}) {
  const { session, state, say } = useFloor();
  const done = state.done.get(step);
  if (!done) return null;
  const put = (reps: number, end = done.end) =>
    say({ kind: 'put-right', step, reps, ...(end && { end }) });
  return (
    <Dialog title={words.last.put} onClose={onClose}>
      <p role="status">{doneWords(done)}</p>
      <div class="floor-put">
        <button
          type="button"
          class="wl-button"
          aria-label={words.lifting.less}
          disabled={done.reps === 0}
          onClick={() => put(done.reps - 1)}
        >
          −1
        </button>
        <p class="floor-number">
          {done.reps} <small>{words.asking.done(done.reps)}</small>
        </p>
        <button
          type="button"
          class="wl-button"
          aria-label={words.lifting.more}
          onClick={() => put(done.reps + 1)}
        >
          +1
        </button>
      </div>
      <h3>{words.asking.title}</h3>
      <Endings
        isTry={session.steps[step]?.kind === 'try'}
        onEnd={(end) => {
          say({ kind: 'put-right', step, reps: done.reps, ...(end && { end }) });
          onClose();
        }}
      />
    </Dialog>
  );
}
