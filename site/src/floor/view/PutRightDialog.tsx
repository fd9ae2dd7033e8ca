import { words } from '../words.ts';
import { Endings } from './AskingView.tsx';
import { Dialog } from './Dialog.tsx';
import { useFloor } from './FloorContext.ts';
import { doneWords } from './LastSet.tsx';
import { RepsPut } from './RepsPut.tsx';

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
      <RepsPut reps={done.reps} onPut={put} />
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
