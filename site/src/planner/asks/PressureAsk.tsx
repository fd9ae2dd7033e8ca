import { getAt, setAt, textAt } from '../state/tree.ts';
import { useAsking } from './Asking.ts';
import { ChoiceAsk } from './fields/ChoiceAsk.tsx';
import { FieldRow } from './fields/FieldRow.tsx';
import { ListAsk } from './fields/ListAsk.tsx';
import { NumberAsk } from './fields/NumberAsk.tsx';
import { SelectAsk } from './fields/SelectAsk.tsx';
import { words } from './words.ts';

const asked = words.health;
const path = ['client', 'health', 'bloodPressure'];
const at = (field: string) => [...path, field];

/** Blood pressure: its state first, the rest once there is an answer. */
export function PressureAsk() {
  const { draft, set, change } = useAsking();
  const choose = (chosen: string) =>
    chosen === '' ? set(path, undefined) : change((before) => setAt(before, at('status'), chosen));
  return (
    <>
      <SelectAsk
        at={at('status')}
        label={asked.answer}
        options={[['', asked.notAsked], ...Object.entries(asked.pressureChoices)]}
        value={textAt(draft, at('status'))}
        onValue={choose}
      />
      {getAt(draft, path) !== undefined && (
        <>
          <ReadingAsk />
          <ChoiceAsk
            at={at('doctorAgrees')}
            label={asked.doctorAgrees}
            choices={asked.yesNo}
            nothing={asked.notAsked}
          />
          <ListAsk at={at('medicines')} label={asked.medicines} choices={asked.medicineNames} />
        </>
      )}
    </>
  );
}

/** The two figures of a reading: both or neither. */
function ReadingAsk() {
  const { draft, change } = useAsking();
  const figures = ['systolic', 'diastolic'] as const;
  const isEmpty = (tree: typeof draft) =>
    figures.every((figure) => textAt(tree, at('reading').concat(figure)) === '');
  return (
    <fieldset
      class="ask-group"
      onFocusOut={() =>
        change((before) => (isEmpty(before) ? setAt(before, at('reading'), undefined) : before))
      }
    >
      <legend class="ask-label">{asked.reading}</legend>
      <FieldRow at={[at('reading')]}>
        {figures.map((figure) => (
          <NumberAsk
            key={figure}
            at={at('reading').concat(figure)}
            label={asked[figure]}
            min={figure === 'systolic' ? 60 : 30}
            max={figure === 'systolic' ? 300 : 200}
            start={figure === 'systolic' ? 120 : 80}
            unit="mmHg"
            isPart
          />
        ))}
      </FieldRow>
    </fieldset>
  );
}
