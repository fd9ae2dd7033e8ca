import { loadingWords } from '@windlass/calculators/live';
import type { Planned } from '../../planner/state/planFrom.ts';
import { otherLoads, stepsLike } from '../desk/otherLoads.ts';
import { stepLoad } from '../session/stepLoad.ts';
import { words } from '../words.ts';
import { Dialog } from './Dialog.tsx';
import { useFloor } from './FloorContext.ts';
import { loadText } from './loadText.ts';

interface LoadDialogProps {
  readonly planned: Planned;
  readonly onClose: () => void;
}

/** The loads that lie next to the planned one in this gym; one of them takes its place. */
export function LoadDialog({ planned, onClose }: LoadDialogProps) {
  const { session, state, say } = useFloor();
  const now = stepLoad(session, state, state.step);
  return (
    <Dialog title={words.menu.load} onClose={onClose}>
      <p>{words.otherLoad.says}</p>
      <ul class="floor-menu">
        {otherLoads(planned, session, state).map((load) => (
          <li key={load.shown}>
            <button
              type="button"
              class="wl-button floor-other"
              aria-pressed={load.shown === now?.shown}
              onClick={() => {
                say({ kind: 'loaded', steps: stepsLike(session, state), load });
                onClose();
              }}
            >
              <strong>{loadText(load.shown, session.unit)}</strong> {loadingWords(load)}
            </button>
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
