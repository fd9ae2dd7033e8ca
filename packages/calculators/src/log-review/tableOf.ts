import {
  type ImportPreview,
  type LogField,
  logCsvColumns,
  previewImport,
} from '@windlass/core/progress';
import { lastCall } from './lastCall.ts';
import { type HeldColumns, heldOf, LOG_FIELDS } from './logColumns.ts';

/** A table before it is read: its columns, and what each holds as far as that leaves no doubt. */
export interface LogTable {
  readonly preview: ImportPreview;
  readonly held: HeldColumns;
  /** It has every column of the library's own format. */
  readonly isOwn: boolean;
}

/** Looks at a table. Columns named like those of the library's own format hold what they are named. */
export const tableOf = lastCall((log: string, columns: string): LogTable => {
  const preview = previewOf(log);
  const headers = preview.columns.map(({ header }) => header.toLowerCase());
  const isOwn = logCsvColumns.every((name) => headers.includes(name));
  return { preview, isOwn, held: columns === '' ? suggested(preview, headers) : heldOf(columns) };
});

const previewOf = lastCall((log: string) => previewImport(log));

function suggested({ suggestion }: ImportPreview, headers: readonly string[]): HeldColumns {
  const named = headers.map((header) => LOG_FIELDS.find((field) => field === header) ?? '');
  const open = (Object.entries(suggestion) as [LogField, number][]).filter(
    ([field, column]) => !named.includes(field) && named[column] === '',
  );
  return named.map((field, column) => open.find(([, at]) => at === column)?.[0] ?? field);
}
