import { useState } from 'preact/hooks';
import { PieceRows, SavedAsk } from '../foldedParts.ts';
import { addEquipment, type EquipmentKind, equipmentKinds } from '../state/gymEdits.ts';
import { listAt, textAt } from '../state/tree.ts';
import { words as page } from '../words.ts';
import { useAsking } from './Asking.ts';
import { EquipmentAsk } from './EquipmentAsk.tsx';
import { Fold } from './fields/Fold.tsx';
import { WordsAsk } from './fields/WordsAsk.tsx';
import { words } from './words.ts';

/** What the room holds: plates by the piece, and everything that gives a load. */
export function GymAsk() {
  const { draft } = useAsking();
  const equipment = listAt(draft, ['gym', 'equipment']);
  const plates = listAt(draft, ['gym', 'plates']).map((_, place) =>
    textAt(draft, ['gym', 'plates', place, 'weight']),
  );
  return (
    <div class="folds">
      <div class="saved">
        <SavedAsk part="gym" />
      </div>
      <WordsAsk at={['gym', 'name']} label={words.gym.name} />
      <Fold title={words.gym.plates} answer={plates.join(', ')} places={[['gym', 'plates']]}>
        <PieceRows at={['gym', 'plates']} label={words.gym.plates} add={words.gym.addPlate} />
      </Fold>
      {equipment.map((_, place) => (
        <EquipmentAsk key={textAt(draft, ['gym', 'equipment', place, 'id'])} place={place} />
      ))}
      <AddEquipment />
    </div>
  );
}

function AddEquipment() {
  const { change } = useAsking();
  const [kind, setKind] = useState<EquipmentKind>('barbell');
  return (
    <div class="ask">
      <label class="ask-label" for="add-equipment">
        {words.gym.add}
      </label>
      <div class="ask-with">
        <select
          id="add-equipment"
          class="wl-select"
          value={kind}
          onChange={({ currentTarget: { value } }) =>
            setKind(equipmentKinds.find((one) => one === value) ?? kind)
          }
        >
          {equipmentKinds.map((one) => (
            <option key={one} value={one} selected={one === kind}>
              {words.gym.kinds[one]}
            </option>
          ))}
        </select>
        <button
          type="button"
          class="wl-button"
          onClick={() => change((draft) => addEquipment(draft, kind, words.gym.newNames[kind]))}
        >
          {page.actions.add}
        </button>
      </div>
    </div>
  );
}
