import { useId, useState } from 'preact/hooks';
import { listAt, setAt, textAt } from '../planner/state/tree.ts';
import { NameField } from './NameField.tsx';
import type { Place } from './People.ts';
import { planInGym } from './pages.ts';
import { useChanges } from './useChanges.ts';
import { words } from './words.ts';

/** A gym: what it holds, and the way to change that. */
export function GymRow({ place: { record, name } }: { readonly place: Place }) {
  const { keep, remove } = useChanges();
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  const equipment = listAt(record.gym, ['equipment']);
  return (
    <li class="entry">
      <div class="entry-head">
        <h3>{name}</h3>
        <p class="entry-brief">{equipment.map((one) => textAt(one, ['name'])).join(' · ')}</p>
      </div>
      <p class="entry-count">
        <span class="entry-number">{equipment.length}</span> {words.gyms.pieces(equipment.length)}
      </p>
      <div class="entry-actions">
        <a
          class="wl-button entry-go"
          href={planInGym(record.id)}
          aria-label={words.gyms.editOf(name)}
        >
          {words.gyms.edit}
        </a>
        <button
          type="button"
          class="wl-button"
          aria-expanded={isOpen}
          aria-controls={id}
          aria-label={words.people.moreOf(name)}
          onClick={() => setOpen(!isOpen)}
        >
          {words.people.more}
        </button>
      </div>
      <div id={id} class="entry-more" hidden={!isOpen}>
        {isOpen && (
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
      </div>
    </li>
  );
}
