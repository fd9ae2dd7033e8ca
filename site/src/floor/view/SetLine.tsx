import { windowWords } from '../../planner/sheet/windowWords.ts';
import { stepLoad } from '../session/stepLoad.ts';
import { words } from '../words.ts';
import { useFloor, useStep } from './FloorContext.ts';
import { loadText } from './loadText.ts';

/** The set in one line, while something else is the loudest: name, load, count asked. */
export function SetLine() {
  const { session, state } = useFloor();
  const here = useStep();
  if (!here) return null;
  const { step, lift } = here;
  const load = stepLoad(session, state, state.step);
  const asked = step.kind === 'work' ? windowWords(lift.window) : String(step.reps);
  return (
    <header class="floor-line">
      <h2>{lift.name}</h2>
      <p>
        {step.side && <strong>{words.sides[step.side]}, </strong>}
        {load && `${loadText(load.shown, session.unit)}, `}
        {asked} {words.asked.reps(step.reps)}
      </p>
    </header>
  );
}
