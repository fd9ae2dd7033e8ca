import { canLoad, type Exercise } from '@windlass/core/anatomy';
import { useState } from 'preact/hooks';
import { ExerciseChooser, LiftExtras, SetAsk } from '../foldedParts.ts';
import { dateWords } from '../sheet/dateWords.ts';
import { chooseExercise, exerciseAt } from '../state/liftEdits.ts';
import { addSet, setsOf } from '../state/setEdits.ts';
import { listAt, textAt } from '../state/tree.ts';
import { useAsking } from './Asking.ts';
import { exerciseName } from './exerciseName.ts';
import { FieldRow } from './fields/FieldRow.tsx';
import { Fold } from './fields/Fold.tsx';
import { HelpLine } from './fields/HelpLine.tsx';
import { SelectAsk } from './fields/SelectAsk.tsx';
import { LiftOrder } from './LiftOrder.tsx';
import { idOf, problemsAt } from './problemsAt.ts';
import { WorkAsk } from './WorkAsk.tsx';
import { words } from './words.ts';

/** Everything that is wanted of one lift, and what is known of it. */
export function LiftAsk({ place }: { readonly place: number }) {
  const { draft, problems, change, gym } = useAsking();
  const [isChoosing, setChoosing] = useState(false);
  const at = (field: string) => ['intent', 'lifts', place, field];
  const exercise = exerciseAt(draft, place);
  const name = exerciseName(textAt(draft, at('exercise')));
  const choose = (chosen: Exercise) => {
    change((before) => chooseExercise(before, place, chosen, gym.equipment));
    setChoosing(false);
  };
  return (
    <>
      <LiftOrder place={place} name={name} />
      <div class="ask">
        <span class="ask-label" id={`${idOf(at('exercise'))}-label`}>
          {words.asks.exercise}
        </span>
        <button
          type="button"
          class="wl-button choose"
          id={idOf(at('exercise'))}
          aria-haspopup="dialog"
          aria-labelledby={`${idOf(at('exercise'))}-label ${idOf(at('exercise'))}`}
          onClick={() => setChoosing(true)}
        >
          {name}
        </button>
        <HelpLine
          id={`${idOf(at('exercise'))}-help`}
          problems={problemsAt(problems, at('exercise'))}
        />
      </div>
      <EquipmentChoice place={place} exercise={exercise} />
      <WorkAsk at={at} />
      <KnownSets place={place} />
      <Fold title={words.extras.title} places={['join', 'chain', 'overrules'].map(at)}>
        <LiftExtras place={place} />
      </Fold>
      {isChoosing && (
        <ExerciseChooser
          gym={gym}
          chosen={exercise?.id}
          onChoose={choose}
          onClose={() => setChoosing(false)}
        />
      )}
    </>
  );
}

interface EquipmentChoiceProps {
  readonly place: number;
  readonly exercise: Exercise | undefined;
}

/** The set-up of the exercise, and which of the gym's equipment loads it. */
function EquipmentChoice({ place, exercise }: EquipmentChoiceProps) {
  const { draft, set, gym } = useAsking();
  const at = (field: string) => ['intent', 'lifts', place, field];
  const variants = exercise?.variants ?? [];
  const variant = variants.find(({ id }) => id === textAt(draft, at('variant')));
  const able = gym.equipment.filter((item) => exercise === undefined || canLoad(exercise, item));
  return (
    <FieldRow
      at={[at('variant'), at('equipment')]}
      lines={2}
      {...(variant !== undefined && { help: variant.effect })}
    >
      <SelectAsk
        at={at('variant')}
        label={words.asks.variant}
        options={[['', words.asks.usual], ...variants.map(({ id, name }) => [id, name] as const)]}
        value={textAt(draft, at('variant'))}
        onValue={(chosen) => set(at('variant'), chosen === '' ? undefined : chosen)}
        isPart
      />
      <SelectAsk
        at={at('equipment')}
        label={words.asks.equipment}
        options={able.map(({ id, name }) => [id, name] as const)}
        value={textAt(draft, at('equipment'))}
        onValue={(chosen) => set(at('equipment'), chosen)}
        isPart
      />
    </FieldRow>
  );
}

/** The sets that are known of this exercise on this equipment. */
function KnownSets({ place }: { readonly place: number }) {
  const { draft, change } = useAsking();
  const at = (field: string) => textAt(draft, ['intent', 'lifts', place, field]);
  const own = setsOf(draft, at('exercise'), at('equipment'));
  const dates = own.map((set) => textAt(draft, ['client', 'sets', set, 'date'])).sort();
  const isFull = listAt(draft, ['client', 'sets']).length >= 5000;
  return (
    <Fold
      title={words.asks.setsKnown(own.length, dateWords(dates.at(-1) ?? ''))}
      places={own.map((set) => ['client', 'sets', set])}
    >
      {own.length === 0 && <p class="soft">{words.asks.noSets}</p>}
      {own.map((set, index) => (
        <SetAsk key={set} place={set} number={index + 1} />
      ))}
      <button
        type="button"
        class="wl-button"
        disabled={isFull}
        onClick={() => change((before) => addSet(before, at('exercise'), at('equipment')))}
      >
        {words.asks.addSet}
      </button>
    </Fold>
  );
}
