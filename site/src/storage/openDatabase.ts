import { type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';
import { type Failure, failureOf } from './Failure.ts';
import { type Migration, migrations } from './migrations.ts';
import type { Database, Tables } from './Tables.ts';
import { upgrade } from './upgrade.ts';

const NAME = 'windlass';

interface OpenOptions {
  /** The browser took the open database away: a newer page needs it, or its files were removed. */
  readonly onLost?: () => void;
  readonly steps?: readonly Migration[];
}

/**
 * Opens the browser's database and brings it up to this page's version.
 *
 * While an older page holds it open in another tab it is `blocked`; once that tab is closed it can
 * be opened. A database that a newer page has made is `newer` and left alone.
 */
export async function openDatabase({
  onLost,
  steps = migrations,
}: OpenOptions = {}): Promise<{ readonly kind: 'open'; readonly database: Database } | Failure> {
  try {
    const blocked = Promise.withResolvers<null>();
    const opening = openDB<Tables>(NAME, steps.length, {
      upgrade: (database, from, _, transaction) => {
        const { of, within } = untyped(database, transaction);
        upgrade(of, within, from, steps).catch(() => {
          // What it is ended with is told by the promise of the opening.
          transaction.done.catch(() => {});
          transaction.abort();
        });
      },
      blocked: () => blocked.resolve(null),
      blocking: () => {
        void opening.then((database) => database.close());
        onLost?.();
      },
      ...(onLost && { terminated: onLost }),
    });
    const database = await Promise.race([opening, blocked.promise]);
    if (database !== null) return { kind: 'open', database };
    opening.then(
      (late) => late.close(),
      () => {},
    );
    return { kind: 'failed', reason: 'blocked', detail: '' };
  } catch (error) {
    const failure = failureOf(error);
    const isNamed = failure.reason === 'newer' || failure.reason === 'full';
    return isNamed ? failure : { ...failure, reason: 'denied' };
  }
}

/** The tables of earlier and later versions are not those that the types of this one know. */
function untyped(database: unknown, transaction: unknown) {
  return {
    of: database as IDBPDatabase<unknown>,
    within: transaction as IDBPTransaction<unknown, string[], 'versionchange'>,
  };
}
