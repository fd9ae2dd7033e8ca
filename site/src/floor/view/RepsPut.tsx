import { words } from '../words.ts';

interface RepsPutProps {
  readonly reps: number;
  readonly onPut: (reps: number) => void;
  /** The number is said when it changes; where something beside it says it, it is not. */
  readonly isSaid?: boolean;
}

/** The repetitions of a set that is done, one less or one more. */
export function RepsPut({ reps, onPut, isSaid = false }: RepsPutProps) {
  return (
    <div class="floor-put">
      <button
        type="button"
        class="wl-button"
        aria-label={words.lifting.less}
        disabled={reps === 0}
        onClick={() => onPut(reps - 1)}
      >
        −1
      </button>
      <p class="floor-number" role={isSaid ? 'status' : undefined}>
        {reps} <small>{words.asking.done(reps)}</small>
      </p>
      <button
        type="button"
        class="wl-button"
        aria-label={words.lifting.more}
        onClick={() => onPut(reps + 1)}
      >
        +1
      </button>
    </div>
  );
}
