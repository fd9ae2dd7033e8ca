import { freshId, stampNow, storageWords, writeRecords } from '../storage/index.ts';
import { AddByName } from './AddByName.tsx';
import { useKeeping } from './Keeping.ts';
import { newClient } from './newClient.ts';
import { Part } from './Part.tsx';
import { PersonRow } from './PersonRow.tsx';
import { useChanges } from './useChanges.ts';
import { words } from './words.ts';

/** All people, and a line to add one. */
export function PersonList() {
  const { people, gyms } = useKeeping().people;
  const { keep } = useChanges();
  const [only, ...others] = gyms;
  const gymId = others.length === 0 ? only?.record.id : undefined;
  return (
    <Part name={words.people.title}>
      {people.length === 0 ? (
        <Nobody />
      ) : (
        <ul class="entries-kept">
          {people.map((person) => (
            <PersonRow key={person.record.id} person={person} />
          ))}
        </ul>
      )}
      <AddByName
        label={words.people.add}
        onAdd={(name) =>
          keep('clients', newClient(freshId(), name, gymId), name, words.said.added(name))
        }
      />
    </Part>
  );
}

function Nobody() {
  const { database, say } = useKeeping();
  const addExamples = async () => {
    const { boathouseRecords } = await import('./examples.ts');
    const written = await writeRecords(database, boathouseRecords(freshId, stampNow()));
    if (written.kind === 'failed') say({ text: storageWords.failed(written), isWrong: true });
    else say({ text: words.said.examples });
  };
  return (
    <div class="nobody">
      <p>{words.people.empty}</p>
      <button type="button" class="wl-button" onClick={addExamples}>
        {words.people.examples}
      </button>
    </div>
  );
}
