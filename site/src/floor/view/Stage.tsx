import type { Planned } from '../../planner/state/planFrom.ts';
import type { RunControl } from '../useRun.ts';
import { words } from '../words.ts';
import { AskFirst } from './AskFirst.tsx';
import { AskingView } from './AskingView.tsx';
import { useFloor } from './FloorContext.ts';
import { LiftingView } from './LiftingView.tsx';
import { OverView, PastFailureView } from './later.ts';
import { ReadyView } from './ReadyView.tsx';

interface StageProps {
  readonly run: RunControl;
  readonly planned: Planned | null;
  readonly onStart: () => void;
  readonly onCountOn: () => void;
  readonly onPutRight: (step: number) => void;
}

/** What the session is at. */
export function Stage({ run, planned, onStart, onCountOn, onPutRight }: StageProps) {
  const { session, state } = useFloor();
  if (session.askFirst) return <AskFirst {...session.askFirst} />;
  if (session.steps.length === 0) {
    return (
      <div class="floor-set">
        <h2>{words.nothing.title}</h2>
        <p>{session.tooShort ?? words.nothing.says}</p>
      </div>
    );
  }
  switch (state.phase) {
    case 'ready':
      return <ReadyView onStart={onStart} onPutRight={onPutRight} />;
    case 'lifting':
      return <LiftingView onCountOn={onCountOn} />;
    case 'asking':
      return <AskingView />;
    case 'past-failure': {
      const plan = state.chains.get(state.step);
      return plan ? <PastFailureView plan={plan} /> : null;
    }
    case 'over':
      return planned && <OverView planned={planned} onEnd={run.end} onAgain={run.beginAgain} />;
  }
}
