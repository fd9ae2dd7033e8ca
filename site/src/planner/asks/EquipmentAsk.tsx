import { EquipmentFields } from '../foldedParts.ts';
import { type EquipmentKind, newEquipment } from '../state/gymEdits.ts';
import { textAt } from '../state/tree.ts';
import { useAsking } from './Asking.ts';
import { Fold } from './fields/Fold.tsx';
import { WordsAsk } from './fields/WordsAsk.tsx';
import { words } from './words.ts';

/** One piece of equipment: its name, what its kind needs, and the way out of the gym. */
export function EquipmentAsk({ place }: { readonly place: number }) {
  const { draft, set } = useAsking();
  const path = ['gym', 'equipment', place] as const;
  const kind = textAt(draft, [...path, 'kind']);
  const name = textAt(draft, [...path, 'name']);
  return (
    <Fold title={name} answer={isKind(kind) ? words.gym.kinds[kind] : kind} places={[path]}>
      <WordsAsk at={[...path, 'name']} label={words.gym.fields.name} />
      {isKind(kind) && <EquipmentFields kind={kind} path={path} />}
      <button type="button" class="wl-button" onClick={() => set(path, undefined)}>
        {words.asks.remove(name)}
      </button>
    </Fold>
  );
}

function isKind(kind: string): kind is EquipmentKind {
  return Object.hasOwn(newEquipment, kind);
}
