import { words } from '../words.ts';
import { useFloor, useStep } from './FloorContext.ts';

/** Which set it is, and of which lift. */
export function StepHead() {
  const { session } = useFloor();
  const here = useStep();
  if (!here) return null;
  const { step, lift } = here;
  return (
    <header class="floor-head">
      <p class="floor-place">
        <span>{words.place(step.lift + 1, session.lifts.length)}</span>
        <span>{words.set(words.kinds[step.kind], step.number, step.of)}</span>
        {step.side && <strong>{words.sides[step.side]}</strong>}
      </p>
      <h2 tabIndex={-1}>{lift.name}</h2>
    </header>
  );
}
