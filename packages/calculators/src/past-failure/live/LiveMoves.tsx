import { useLayoutEffect, useRef } from 'preact/hooks';
import { live } from './liveWords.ts';
import { nextMoves } from './nextMoves.ts';
import type { LiveSetControl } from './useLiveSet.ts';

interface LiveMovesProps {
  readonly control: LiveSetControl;
  readonly onEnd: () => void;
  readonly onSign: () => void;
}

/** Everything that can be said now: the planned move largest, the sign to stop for always there. */
export function LiveMoves({ control, onEnd, onSign }: LiveMovesProps) {
  const { running, standing, due, say, undo, redo } = control;
  const moves = due ? [] : nextMoves(running.set, standing);
  const first = useRef<HTMLButtonElement>(null);
  const said = running.set.log.length;
  // Before the next key is heard: a focus moved later would take that key from another button.
  useLayoutEffect(() => {
    first.current?.focus();
  }, [said, due === null]);
  return (
    <div class="wl-live-moves">
      {moves.map(({ kind, stage }, place) => (
        <button
          key={place === 0 ? 'first' : kind}
          type="button"
          class={place === 0 ? 'wl-live-first' : 'wl-button'}
          {...(place === 0 ? { ref: first } : {})}
          onClick={() => say({ kind })}
        >
          {live.moves[kind](stage)}
        </button>
      ))}
      {due && (
        <button
          key="first"
          type="button"
          class="wl-live-first"
          ref={first}
          onClick={() => say({ kind: 'stopped', reason: 'chosen' })}
        >
          {live.loadIsDown}
        </button>
      )}
      <button type="button" class="wl-button wl-live-sign" onClick={onSign}>
        {live.sign}
      </button>
      <div class="wl-live-others">
        {!standing.end && (
          <button
            type="button"
            class="wl-button"
            disabled={!standing.next.includes('stopped')}
            onClick={onEnd}
          >
            {live.end}
          </button>
        )}
        <button type="button" class="wl-button" disabled={said === 0} onClick={undo}>
          {live.undo}
        </button>
        <button
          type="button"
          class="wl-button"
          disabled={running.set.undone.length === 0}
          onClick={redo}
        >
          {live.redo}
        </button>
      </div>
    </div>
  );
}
