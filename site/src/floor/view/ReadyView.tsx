import { stepLoad } from '../session/stepLoad.ts';
import { words } from '../words.ts';
import { Asked } from './Asked.tsx';
import { BottomRow } from './BottomRow.tsx';
import { useFloor, useStep } from './FloorContext.ts';
import { LastSet } from './LastSet.tsx';
import { LoadFace } from './LoadFace.tsx';
import { Primary } from './Primary.tsx';
import { RestLine } from './RestLine.tsx';
import { StepHead } from './StepHead.tsx';

interface ReadyViewProps {
  readonly onStart: () => void;
  readonly onPutRight: (step: number) => void;
}

/** The set that comes next, with the rest before it. */
export function ReadyView({ onStart, onPutRight }: ReadyViewProps) {
  const { session, state, say } = useFloor();
  const here = useStep();
  const hasLoad = stepLoad(session, state, state.step) !== null;
  const isWarmUp = here?.step.kind === 'warm-up';
  return (
    <>
      <div class="floor-set">
        <StepHead />
        <RestLine />
        <LastSet onPutRight={onPutRight} />
        <LoadFace />
        <Asked />
      </div>
      <div class="floor-actions">
        <Primary
          name={isWarmUp ? words.done : state.done.has(state.step) ? words.startAgain : words.start}
          focusOn={state.step}
          disabled={!hasLoad}
          onPress={() => (isWarmUp ? say({ kind: 'done' }) : onStart())}
        />
        <BottomRow />
      </div>
    </>
  );
}
