import { type ReadBackup, readBackup, type SavedLists } from '@windlass/core/schema';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { readAll, storageWords, writeRecords } from '../../storage/index.ts';
import { useKeeping } from '../Keeping.ts';
import { compareBackup, type Here, type RestoreItem, type RestoreState } from './compareBackup.ts';
import { ItemGroup } from './ItemGroup.tsx';
import { momentWords } from './momentWords.ts';
import { takenLists } from './takenLists.ts';
import { UnreadRecords } from './UnreadRecords.tsx';
import { words } from './words.ts';

interface RestoreProps {
  readonly file: File;
  readonly onDone: () => void;
}

type Opened =
  | { readonly kind: 'wrong'; readonly why: string }
  | { readonly kind: 'read'; readonly backup: ReadBackup; readonly here: Here };

/** Groups in the order in which they ask for attention. */
const states = ['conflict', 'mends', 'file-goes-on', 'added', 'here-goes-on', 'same'] as const;

/** Shows what restoring a backup would change, asks where both sides differ, and does it at last. */
export function Restore({ file, onDone }: RestoreProps) {
  const { database, people, say } = useKeeping();
  const [opened, setOpened] = useState<Opened>();
  const [chosen, setChosen] = useState<ReadonlyMap<string, boolean>>(new Map());
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    let isWanted = true;
    void openBackup(file, database).then((read) => isWanted && setOpened(read));
    return () => {
      isWanted = false;
    };
  }, [file, database, people]);
  useLayoutEffect(() => heading.current?.focus(), [opened === undefined]);
  if (opened === undefined) return null;

  const items = opened.kind === 'read' ? compareBackup(opened.here, opened.backup.lists) : [];
  const isTaken = (item: RestoreItem) => chosen.get(keyOf(item)) ?? isTakenAtFirst(item.state);
  const { lists, expected, count } = takenLists(items, isTaken);
  const restore = async () => {
    const written = await writeRecords(database, lists, expected);
    if (written.kind === 'failed') {
      return say({ text: storageWords.failed(written), isWrong: true });
    }
    if (written.kind === 'changed-elsewhere') {
      setOpened(await openBackup(file, database));
      return say({ text: words.changedMeanwhile, isWrong: true });
    }
    say({ text: words.done(count) });
    onDone();
  };
  return (
    <section class="restore" aria-label={words.title(file.name)}>
      <h3 ref={heading} tabIndex={-1}>
        {words.title(file.name)}
      </h3>
      {opened.kind === 'wrong' && <p role="alert">{words.damaged(file.name, opened.why)}</p>}
      {opened.kind === 'read' && (
        <>
          <p>{words.from(momentWords(opened.backup.writtenAt))}</p>
          {states.map((state) => (
            <ItemGroup
              key={state}
              state={state}
              items={items.filter((item) => item.state === state)}
              clients={[...opened.backup.lists.clients, ...opened.here.lists.clients]}
              isTaken={isTaken}
              onTake={(some, isWanted) =>
                setChosen(
                  new Map([...chosen, ...some.map((one) => [keyOf(one), isWanted] as const)]),
                )
              }
            />
          ))}
          <UnreadRecords unread={opened.backup.unread} />
          <Others here={opened.here.lists} items={items} />
          <p role="status">{items.length === 0 ? words.empty : words.result(count)}</p>
        </>
      )}
      <div class="kept-actions">
        {count > 0 && (
          <button type="button" class="wl-button" data-kind="go" onClick={restore}>
            {words.restore(count)}
          </button>
        )}
        <button type="button" class="wl-button" onClick={onDone}>
          {words.stop}
        </button>
      </div>
    </section>
  );
}

/** What is here and not in the file. */
function Others({
  here,
  items,
}: {
  readonly here: SavedLists;
  readonly items: readonly RestoreItem[];
}) {
  const all = Object.values(here).reduce((sum, list) => sum + list.length, 0);
  const others = all - items.filter((item) => item.here !== undefined).length;
  return others > 0 ? <p>{words.others(others)}</p> : null;
}

async function openBackup(file: File, database: Parameters<typeof readAll>[0]): Promise<Opened> {
  const read = readBackup(await file.text());
  if (!read.ok) return { kind: 'wrong', why: read.problems[0]?.message ?? '' };
  const all = await readAll(database);
  if (all.kind === 'failed') return { kind: 'wrong', why: storageWords.failed(all) };
  return { kind: 'read', backup: read.value, here: all };
}

function isTakenAtFirst(state: RestoreState): boolean {
  return state === 'added' || state === 'mends' || state === 'file-goes-on';
}

function keyOf({ kind, file }: RestoreItem): string {
  return `${kind}/${file.id}`;
}
