import { words } from '../words.ts';
import { Dialog } from './Dialog.tsx';
import type { DialogName } from './DialogContext.ts';
import { useFloor, useStep } from './FloorContext.ts';

interface MenuDialogProps {
  readonly onOpen: (name: DialogName) => void;
  readonly onTrack: () => void;
  readonly onClose: () => void;
}

/** What else can be done with the set that comes next. */
export function MenuDialog({ onOpen, onTrack, onClose }: MenuDialogProps) {
  const { session, state, effective, say } = useFloor();
  const here = useStep();
  if (!here) return null;
  const { menu } = words;
  const open = session.steps.flatMap((_, place) => (state.done.has(place) ? [] : [place]));
  const ofLift = open.filter((place) => session.steps[place]?.lift === here.step.lift);
  const leaveOut = (steps: readonly number[]) => () => {
    say({ kind: 'left-out', steps });
    onClose();
  };
  const bringBack = () => {
    say({ kind: 'redone' });
    onClose();
  };
  const isWork = here.step.kind === 'work';
  const items = [
    [menu.load, () => onOpen('load')],
    [menu.skipSet, leaveOut([state.step])],
    [menu.skipLift, leaveOut(ofLift)],
    ...(isWork ? ([[menu.carryOn, () => onOpen('carry-on')]] as const) : []),
    [menu.count, () => onOpen('settings')],
    ...(here.step.kind === 'warm-up' ? [] : ([[menu.track, onTrack]] as const)),
    ...(effective.undone.length > 0 ? ([[words.redo, bringBack]] as const) : []),
    [menu.finish, leaveOut(open)],
  ] as const;
  return (
    <Dialog title={menu.title} onClose={onClose}>
      <ul class="floor-menu">
        {items.map(([name, onClick]) => (
          <li key={name}>
            <button type="button" class="wl-button" onClick={onClick}>
              {name}
            </button>
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
