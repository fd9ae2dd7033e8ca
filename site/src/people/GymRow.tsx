import { listAt, setAt, textAt } from '../planner/state/tree.ts';
import { Entry } from './Entry.tsx';
import { NameField } from './NameField.tsx';
import type { Place } from './People.ts';
import { planInGym } from './pages.ts';
import { useChanges } from './useChanges.ts';
import { words } from './words.ts';

/** A gym: what it holds, and the way to change that. */
export function GymRow({ place: { record, name } }: { readonly place: Place }) {
  const { keep, remove } = useChanges();
  const equipment = listAt(record.gym, ['equipment']);
  return (
    <Entry
      name={name}
      brief={equipment.map((one) => textAt(one, ['name'])).join(' · ')}
      count={
        <>
          <span class="entry-number">{equipment.length}</span> {words.gyms.pieces(equipment.length)}
        </>
      }
      go={{ href: planInGym(record.id), label: words.gyms.editOf(name), says: words.gyms.edit }}
      more={() => (
        <>
          <div class="entry-fields">
            <NameField
              name={name}
              onName={(next) =>
                keep(
                  'gyms',
                  { ...record, gym: setAt(record.gym, ['name'], next) },
                  name,
                  words.said.renamed(next),
                )
              }
            />
          </div>
          <button
            type="button"
            class="wl-button entry-delete"
            onClick={() => remove('gyms', record, name, words.said.deleted(name))}
          >
            {words.gyms.delete}
          </button>
        </>
      )}
    />
  );
}
