import { bad, good, type Outcome, type Problem } from '../basis/index.ts';
import type { ReadBackup, SavedLists, UnreadRecord } from './Backup.ts';
import { isTooDeep } from './isTooDeep.ts';
import { readSaved } from './readSaved.ts';
import type { SavedKind, SavedRecords } from './Saved.ts';

const VERSION = 1;

/**
 * Reads a backup file as `writeBackup` writes it. Every record is checked by itself: one that is
 * damaged is given back with its text and what would be right, and the others are read.
 *
 * A file that is no JSON, no backup, or of a version later than this library knows is a problem as
 * a whole (`schema.not-a-backup`, `schema.newer-backup`). An id given twice in a list counts for
 * its first record; the second is unread.
 *
 * @example
 * ```ts
 * import { readBackup } from '@windlass/core/schema';
 * const text = '{ "format": "windlass-backup", "version": 1, "writtenAt": "", "gyms": [{}] }';
 * const read = readBackup(text);
 * read.ok && read.value.unread.map(({ kind, number }) => `${kind} ${number}`); // ['gyms 1']
 * const newer = readBackup('{ "format": "windlass-backup", "version": 2 }');
 * newer.ok ? '' : newer.problems[0]?.code; // 'schema.newer-backup'
 * ```
 */
export function readBackup(text: string): Outcome<ReadBackup> {
  const file = parse(text);
  if (!isRecord(file) || file.format !== 'windlass-backup' || typeof file.version !== 'number') {
    return bad(NOT_A_BACKUP);
  }
  if (file.version > VERSION) return bad(newer(file.version));
  if (file.version !== VERSION) return bad(NOT_A_BACKUP);
  const unread: UnreadRecord[] = [];
  const list = <Kind extends SavedKind>(kind: Kind) => readList(kind, file[kind], unread);
  const lists: SavedLists = {
    clients: list('clients'),
    gyms: list('gyms'),
    sessions: list('sessions'),
    running: list('running'),
  };
  return good({
    lists,
    writtenAt: typeof file.writtenAt === 'string' ? file.writtenAt : '',
    unread,
  });
}

function readList<Kind extends SavedKind>(
  kind: Kind,
  list: unknown,
  unread: UnreadRecord[],
): readonly SavedRecords[Kind][] {
  if (list === undefined) return [];
  const entries: readonly unknown[] = Array.isArray(list) ? list : [list];
  const seen = new Set<string>();
  return entries.flatMap((entry, index) => {
    const read = readSaved(kind, entry);
    const isTwice = read.ok && seen.has(read.value.id);
    if (read.ok && !isTwice) {
      seen.add(read.value.id);
      return [read.value];
    }
    const problems = read.ok ? [TWICE] : read.problems;
    unread.push({ kind, number: index + 1, text: textOf(entry), problems });
    return [];
  });
}

/** A record as it stood; empty where it is too deep to be written. */
function textOf(entry: unknown): string {
  return isTooDeep(entry) ? '' : JSON.stringify(entry);
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/u, ''));
  } catch {
    return undefined;
  }
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

const NOT_A_BACKUP: Problem = {
  code: 'schema.not-a-backup',
  path: [],
  message: `Give a whole backup file: JSON with "format": "windlass-backup" and "version": ${VERSION}.`,
};

const TWICE: Problem = {
  code: 'schema.id-twice',
  path: ['id'],
  message: 'Give every record of a list an id of its own.',
};

function newer(version: number): Problem {
  return {
    code: 'schema.newer-backup',
    path: ['version'],
    message: `This backup is of version ${version} and was written by a newer Windlass; give one of version ${VERSION}, or read it with the newer one.`,
    params: { version },
    received: version,
  };
}
