import { useEffect, useState } from 'preact/hooks';
import { fetchDesk } from './later.ts';
import type { FloorState } from './run/FloorState.ts';
import { stepLoad } from './session/stepLoad.ts';
import type { RunControl } from './useRun.ts';
import { words } from './words.ts';

/** Works out the next load of a lift without history, when the try before it has been told. */
export function useFinding(
  { session, plan, say, note }: Pick<RunControl, 'session' | 'plan' | 'say' | 'note'>,
  state: FloorState,
): void {
  const [tries, setTries] = useState(0);
  const isWanted = state.phase === 'ready' && stepLoad(session, state, state.step) === null;
  useEffect(() => {
    if (!isWanted) return;
    let isGone = false;
    let timer: ReturnType<typeof setTimeout> | undefined;
    fetchDesk().then(
      ({ openPlan, nextTry }) => {
        const opened = openPlan(plan);
        if (isGone || opened.kind !== 'session') return;
        const { what, isTooHeavy } = nextTry(opened.planned, session, state);
        const lift = session.lifts[session.steps[state.step]?.lift ?? -1];
        if (isTooHeavy && lift) note(words.tooHeavy(lift.name));
        say(...what);
      },
      // Without a network it is tried again, until it is there.
      () => {
        timer = setTimeout(() => setTries(tries + 1), 5000);
      },
    );
    return () => {
      isGone = true;
      clearTimeout(timer);
    };
  }, [isWanted, state.step, tries]);
}
