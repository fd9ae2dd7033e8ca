import type { TableName } from './Tables.ts';

/** One step from a version of the database to the next. */
export interface Migration {
  /** Tables that the step makes. */
  readonly creates: readonly NewTable[];
  /** What becomes of a record of an earlier version; left out where records stay as they are. */
  readonly change?: (table: TableName, record: unknown) => unknown;
}

interface NewTable {
  readonly name: TableName;
  readonly key: string | readonly string[];
  readonly index?: { readonly name: string; readonly of: readonly string[] };
}

/** All steps, from no database at all. How many there are is the version of the database. */
export const migrations: readonly Migration[] = [
  {
    creates: [
      { name: 'clients', key: 'id' },
      { name: 'gyms', key: 'id' },
      { name: 'sessions', key: 'id', index: { name: 'day', of: ['clientId', 'date'] } },
      { name: 'running', key: 'id' },
      { name: 'events', key: ['session', 'number'] },
    ],
  },
];
