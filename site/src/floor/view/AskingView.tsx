import type { SetEnd } from '@windlass/core/strength';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { words } from '../words.ts';
import { BottomRow } from './BottomRow.tsx';
import { useFloor, useStep } from './FloorContext.ts';
import { RepsPut } from './RepsPut.tsx';
import { RestLine } from './RestLine.tsx';
import { SetLine } from './SetLine.tsx';

/** After a set that was stopped: its count, to be put right, and how many more there were. */
export function AskingView() {
  const { state, say } = useFloor();
  const here = useStep();
  const done = state.done.get(state.step);
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus({ preventScroll: true }), []);
  if (!here || !done) return null;
  const put = (reps: number) => say({ kind: 'put-right', step: state.step, reps });
  return (
    <>
      <div class="floor-set">
        <SetLine />
        <RestLine />
        <RepsPut reps={done.reps} onPut={put} isSaid />
      </div>
      <div class="floor-actions">
        <h3 class="floor-question" tabIndex={-1} ref={heading}>
          {words.asking.title}
        </h3>
        <Endings
          isTry={here.step.kind === 'try'}
          onEnd={(end) => say(end ? { kind: 'told', end } : { kind: 'told' })}
        />
        <BottomRow />
      </div>
    </>
  );
}

interface EndingsProps {
  readonly isTry: boolean;
  readonly onEnd: (end: SetEnd | undefined) => void;
}

/** The ways a set can have ended, one press each. */
export function Endings({ isTry, onEnd }: EndingsProps) {
  const left = [0, 1, 2, 3, 4, 5];
  return (
    <div class="floor-endings">
      {left.map((repsLeft) => (
        <button
          key={repsLeft}
          type="button"
          class="wl-button floor-left"
          onClick={() =>
            onEnd(repsLeft === 5 ? { kind: 'more', atLeast: 5 } : { kind: 'reserve', repsLeft })
          }
        >
          {words.asking.left(repsLeft)}
        </button>
      ))}
      <button type="button" class="wl-button" onClick={() => onEnd({ kind: 'failure' })}>
        {words.asking.failed}
      </button>
      <button
        type="button"
        class="wl-button"
        onClick={() => onEnd(isTry ? { kind: 'more', atLeast: 15 } : undefined)}
      >
        {isTry ? words.asking.easy : words.asking.unknown}
      </button>
    </div>
  );
}
