import { writeLogCsv, writeLogJson } from '@windlass/core/progress';
import type { DoneSession } from '@windlass/core/schema';
import { saveFile } from '../../planner/saveFile.ts';
import { fileName } from './fileName.ts';
import { words } from './words.ts';

interface SaveLogProps {
  readonly name: string;
  readonly sessions: readonly DoneSession[];
}

/** Takes a log along as a file, for a table program or for another one of ours. */
export function SaveLog({ name, sessions }: SaveLogProps) {
  const sets = () => sessions.flatMap((session) => session.sets);
  const file = fileName(name);
  return (
    <>
      <button
        type="button"
        class="wl-button"
        onClick={() => saveFile(words.csvFile(file), writeLogCsv(sets()))}
      >
        {words.saveCsv}
      </button>
      <button
        type="button"
        class="wl-button"
        onClick={() => saveFile(words.jsonFile(file), writeLogJson(sets()))}
      >
        {words.saveJson}
      </button>
    </>
  );
}
