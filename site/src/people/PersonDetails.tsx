import { useId } from 'preact/hooks';
import { setAt } from '../planner/state/tree.ts';
import { useKeeping } from './Keeping.ts';
import { LogView } from './laterParts.ts';
import { NameField } from './NameField.tsx';
import type { Person } from './People.ts';
import { useChanges } from './useChanges.ts';
import { words } from './words.ts';

/** What can be changed of a person, and the log. */
export function PersonDetails({ person }: { readonly person: Person }) {
  const { record, name } = person;
  const { keep, remove } = useChanges();
  return (
    <>
      <div class="entry-fields">
        <NameField
          name={name}
          onName={(next) =>
            keep(
              'clients',
              { ...record, client: setAt(record.client, ['name'], next) },
              name,
              words.said.renamed(next),
            )
          }
        />
        <UsualGym person={person} />
      </div>
      <LogView person={person} />
      <button
        type="button"
        class="wl-button entry-delete"
        onClick={() => remove('clients', record, name, words.said.deleted(name))}
      >
        {words.people.delete}
      </button>
    </>
  );
}

/** The gym that the planner opens with for this person. */
function UsualGym({ person: { record, name } }: { readonly person: Person }) {
  const id = useId();
  const { people } = useKeeping();
  const { keep } = useChanges();
  const { gymId, ...others } = record;
  const isGone = gymId !== undefined && people.gyms.every((gym) => gym.record.id !== gymId);
  return (
    <div class="kept-field">
      <label for={id}>{words.people.gym}</label>
      <select
        id={id}
        class="wl-select"
        value={gymId ?? ''}
        onChange={({ currentTarget: { value } }) =>
          keep(
            'clients',
            { ...others, ...(value !== '' && { gymId: value }) },
            name,
            words.said.gymSet(name),
          )
        }
      >
        <option value="">{words.people.noGym}</option>
        {isGone && <option value={gymId}>{words.people.goneGym}</option>}
        {people.gyms.map((gym) => (
          <option key={gym.record.id} value={gym.record.id} selected={gym.record.id === gymId}>
            {gym.name}
          </option>
        ))}
      </select>
    </div>
  );
}
