import { saveFile } from '../planner/saveFile.ts';
import { readAll, storageWords } from '../storage/index.ts';
import { useKeeping } from './Keeping.ts';
import { words } from './words.ts';

/** Saves everything as one file. */
export function useBackup(): () => Promise<void> {
  const { database, say } = useKeeping();
  return async () => {
    const all = await readAll(database);
    if (all.kind === 'failed') return say({ text: storageWords.failed(all), isWrong: true });
    const { writeBackup } = await import('@windlass/core/schema');
    const now = new Date().toISOString();
    saveFile(words.kept.backupFile(now.slice(0, 10)), writeBackup(all.lists, now));
    if (all.broken.length > 0) say({ text: words.kept.backupWithBroken(all.broken.length) });
  };
}
