import { freshId } from '../storage/index.ts';
import { AddByName } from './AddByName.tsx';
import { GymRow } from './GymRow.tsx';
import { useKeeping } from './Keeping.ts';
import { newGym } from './newGym.ts';
import { Part } from './Part.tsx';
import { useChanges } from './useChanges.ts';
import { words } from './words.ts';

/** All gyms, and a line to add one. */
export function GymList() {
  const { gyms } = useKeeping().people;
  const { keep } = useChanges();
  return (
    <Part name={words.gyms.title}>
      {gyms.length === 0 ? (
        <p>{words.gyms.empty}</p>
      ) : (
        <ul class="entries-kept">
          {gyms.map((place) => (
            <GymRow key={place.record.id} place={place} />
          ))}
        </ul>
      )}
      <AddByName
        label={words.gyms.add}
        onAdd={(name) => keep('gyms', newGym(freshId(), name), name, words.said.added(name))}
      />
    </Part>
  );
}
