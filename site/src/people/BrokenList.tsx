import { saveFile } from '../planner/saveFile.ts';
import { type BrokenRecord, removeBroken, storageWords } from '../storage/index.ts';
import { useKeeping } from './Keeping.ts';
import { Part } from './Part.tsx';
import { words } from './words.ts';

/** Records that cannot be read: what is the matter, and taking them along or deleting them. */
export function BrokenList({ broken }: { readonly broken: readonly BrokenRecord[] }) {
  const { database, say } = useKeeping();
  const remove = async (record: BrokenRecord) => {
    const removed = await removeBroken(database, record);
    if (removed.kind === 'failed') say({ text: storageWords.failed(removed), isWrong: true });
    else say({ text: words.broken.removed });
  };
  return (
    <Part name={words.broken.title}>
      <p>{words.broken.says(broken.length)}</p>
      <ul class="entries-kept">
        {broken.map((record) => {
          const kind = words.broken.kinds[record.kind];
          return (
            <li key={`${record.kind}/${record.id}`} class="entry">
              <div class="entry-head">
                <h3>{kind}</h3>
                <p class="entry-brief">{record.problems[0]?.message}</p>
              </div>
              <div class="entry-actions">
                <button
                  type="button"
                  class="wl-button"
                  aria-label={words.broken.saveOf(kind, record.id)}
                  onClick={() => saveFile(`${record.kind}-${record.id}.json`, `${record.text}\n`)}
                >
                  {words.broken.save}
                </button>
                <button
                  type="button"
                  class="wl-button"
                  aria-label={words.broken.removeOf(kind, record.id)}
                  onClick={() => remove(record)}
                >
                  {words.broken.remove}
                </button>
              </div>
            </li>
          );
        })}
      </ul>
    </Part>
  );
}
