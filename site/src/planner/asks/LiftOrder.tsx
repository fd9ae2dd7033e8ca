import { moveLift } from '../state/liftEdits.ts';
import { namesMuscles } from '../state/muscleEdits.ts';
import { listAt } from '../state/tree.ts';
import { words } from '../words.ts';
import { useAsking } from './Asking.ts';

interface LiftOrderProps {
  readonly place: number;
  readonly name: string;
}

/** Where in the session a lift is done, and whether at all. */
export function LiftOrder({ place, name }: LiftOrderProps) {
  const { draft, change, set } = useAsking();
  const count = listAt(draft, ['intent', 'lifts']).length;
  const move = (by: 1 | -1) => {
    change((before) => moveLift(before, place, by));
    requestAnimationFrame(() => document.getElementById(buttonId(place + by, by))?.focus());
  };
  return (
    <div class="order">
      <p class="order-title">{words.lift.number(place + 1)}</p>
      <button
        type="button"
        class="wl-button"
        id={buttonId(place, -1)}
        disabled={place === 0}
        aria-label={words.lift.up(name)}
        onClick={() => move(-1)}
      >
        <span aria-hidden="true">↑</span>
      </button>
      <button
        type="button"
        class="wl-button"
        id={buttonId(place, 1)}
        disabled={place === count - 1}
        aria-label={words.lift.down(name)}
        onClick={() => move(1)}
      >
        <span aria-hidden="true">↓</span>
      </button>
      <button
        type="button"
        class="wl-button"
        disabled={count === 1 && !namesMuscles(draft)}
        aria-label={words.lift.remove(name)}
        onClick={() => set(['intent', 'lifts', place], undefined)}
      >
        <span aria-hidden="true">×</span>
      </button>
    </div>
  );
}

function buttonId(place: number, by: 1 | -1): string {
  return `lift-${place}-${by === 1 ? 'later' : 'earlier'}`;
}
