import type { ComponentChildren } from 'preact';
import { useContext } from 'preact/hooks';
import { words } from '../words.ts';
import { DialogContext } from './DialogContext.ts';
import { useFloor } from './FloorContext.ts';

/** Always at the same place: taking back on the left, a sign to stop on the right. */
export function BottomRow({ children }: { readonly children?: ComponentChildren }) {
  const { effective, say } = useFloor();
  const open = useContext(DialogContext);
  return (
    <div class="floor-row">
      <button
        type="button"
        class="wl-button"
        disabled={effective.events.length === 0}
        onClick={() => say({ kind: 'undone' })}
      >
        {words.undo}
      </button>
      {children ?? (
        <button type="button" class="wl-button" onClick={() => open('menu')}>
          {words.more}
        </button>
      )}
      <button type="button" class="wl-button floor-sign" onClick={() => open('signs')}>
        <span aria-hidden="true">■</span> {words.sign}
      </button>
    </div>
  );
}
