import type { ImportedLog } from '@windlass/core/progress';
import { writeLogCsv } from '@windlass/core/progress';
import type { DoneSession } from '@windlass/core/schema';
import { readGym } from '@windlass/core/schema';
import { useMemo, useState } from 'preact/hooks';
import { saveFile } from '../../planner/saveFile.ts';
import { freshId, stampNow, storageWords, writeRecords } from '../../storage/index.ts';
import { useKeeping } from '../Keeping.ts';
import type { Person } from '../People.ts';
import { choiceFor, type NameChoices, namedSets } from './NameChoice.ts';
import { NameTable } from './NameTable.tsx';
import { newSessions } from './newSessions.ts';
import { UnreadRows } from './UnreadRows.tsx';
import { words } from './words.ts';

interface ReadSetsProps {
  readonly log: ImportedLog;
  readonly person: Person;
  readonly sessions: readonly DoneSession[];
  readonly onDone: () => void;
}

/** What came out of a file: what its names stand for, what joins the log, and every row that was not read. */
export function ReadSets({ log, person, sessions, onDone }: ReadSetsProps) {
  const { database, people, say } = useKeeping();
  const [changed, setChanged] = useState<NameChoices>({});
  const [isFailed, setFailed] = useState(false);
  const equipment = useMemo(() => {
    const place = people.gyms.find(({ record }) => record.id === person.record.gymId);
    const gym = readGym(place?.record.gym);
    return gym.ok ? gym.value.equipment : [];
  }, [people, person]);
  const names = [...new Set(log.sets.map(({ exercise }) => exercise))];
  const choices: NameChoices = Object.fromEntries(
    names.map((name) => [name, changed[name] ?? choiceFor(name, equipment)]),
  );
  const stamp = useMemo(stampNow, []);
  const { sessions: fresh, already } = newSessions(
    namedSets(log.sets, choices),
    sessions,
    person.record.id,
    () => ({ id: freshId(), revision: stamp.revision, past: [], changedAt: stamp.at }),
  );
  const sets = fresh.flatMap((session) => session.sets);
  const asked = words.brought;
  const bringIn = async () => {
    const written = await writeRecords(database, { sessions: fresh });
    setFailed(written.kind !== 'written');
    if (written.kind === 'failed') {
      return say({ text: storageWords.failed(written), isWrong: true });
    }
    say({ text: asked.done(sets.length, person.name) });
    onDone();
  };
  return (
    <>
      {names.length > 0 && (
        <NameTable
          sets={log.sets}
          choices={choices}
          equipment={equipment}
          onChoice={(name, choice) => setChanged({ ...changed, [name]: choice })}
        />
      )}
      <div role="status">
        <p>{sets.length > 0 ? asked.result(sets.length, fresh.length) : asked.nothing}</p>
        {already > 0 && <p>{asked.already(already)}</p>}
      </div>
      {log.unread.length > 0 && <UnreadRows unread={log.unread} />}
      <div class="kept-actions">
        {sets.length > 0 && (
          <button type="button" class="wl-button" data-kind="go" onClick={bringIn}>
            {asked.add(sets.length)}
          </button>
        )}
        {isFailed && (
          <button
            type="button"
            class="wl-button"
            onClick={() => saveFile(asked.readFile, writeLogCsv(sets))}
          >
            {asked.saveRead}
          </button>
        )}
      </div>
    </>
  );
}
