import { useState } from 'preact/hooks';
import { useAsking } from './asks/Asking.ts';
import { ExerciseChooser } from './foldedParts.ts';
import { addLift } from './state/liftEdits.ts';
import { addMuscles, namesMuscles } from './state/muscleEdits.ts';
import { listAt } from './state/tree.ts';
import { words } from './words.ts';

const MOST_LIFTS = 20;

/** One more lift at the end of the session: the exercise first, the rest as in the lift before. */
export function AddLift() {
  const { draft, change, gym } = useAsking();
  const [isChoosing, setChoosing] = useState(false);
  return (
    <div class="add-lift no-print">
      <button
        type="button"
        class="wl-button"
        aria-haspopup="dialog"
        disabled={listAt(draft, ['intent', 'lifts']).length >= MOST_LIFTS}
        onClick={() => setChoosing(true)}
      >
        {words.lift.add}
      </button>
      {!namesMuscles(draft) && (
        <button type="button" class="wl-button" onClick={() => change(addMuscles)}>
          {words.muscles.add}
        </button>
      )}
      {isChoosing && (
        <ExerciseChooser
          gym={gym}
          onChoose={(exercise) => {
            change((before) => addLift(before, exercise, gym.equipment));
            setChoosing(false);
          }}
          onClose={() => setChoosing(false)}
        />
      )}
    </div>
  );
}
