import type { IDBPDatabase, IDBPTransaction } from 'idb';
import type { Migration } from './migrations.ts';
import type { TableName } from './Tables.ts';

type Untyped = IDBPDatabase<unknown>;
type Upgrading = IDBPTransaction<unknown, string[], 'versionchange'>;

/** Takes a database through the steps after its version, records and all, in one transaction. */
export async function upgrade(
  database: Untyped,
  transaction: Upgrading,
  from: number,
  steps: readonly Migration[],
): Promise<void> {
  for (const { creates, change } of steps.slice(from)) {
    if (change) {
      for (const table of [...database.objectStoreNames]) {
        await changeAll(transaction, table as TableName, change);
      }
    }
    for (const { name, key, index } of creates) {
      const keyPath = typeof key === 'string' ? key : [...key];
      const table = database.createObjectStore(name, { keyPath });
      if (index) table.createIndex(index.name, [...index.of]);
    }
  }
}

async function changeAll(
  transaction: Upgrading,
  table: TableName,
  change: NonNullable<Migration['change']>,
): Promise<void> {
  let cursor = await transaction.objectStore(table).openCursor();
  while (cursor) {
    await cursor.update(change(table, cursor.value));
    cursor = await cursor.continue();
  }
}
