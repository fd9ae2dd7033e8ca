import {
  type ImportedLog,
  type ImportPreview,
  logCsvColumns,
  previewImport,
  readLogCsv,
  readLogJson,
  type Separator,
} from '@windlass/core/progress';

/** What a file with sets turns out to be. */
export type OpenedLog =
  /** A log that was saved here: nothing has to be asked. */
  | { readonly kind: 'own'; readonly log: ImportedLog }
  /** A table of somebody else's making. */
  | { readonly kind: 'table'; readonly preview: ImportPreview }
  | { readonly kind: 'empty' };

/** Looks at the text of a file. */
export function openLogFile(text: string, separator?: Separator): OpenedLog {
  const plain = text.replace(/^\uFEFF/u, '').trim();
  if (plain === '') return { kind: 'empty' };
  if (/^[{[]/.test(plain)) return { kind: 'own', log: readLogJson(plain) };
  const [header = ''] = plain.split(/\r\n|\r|\n/, 1);
  if (header === logCsvColumns.join(',')) return { kind: 'own', log: readLogCsv(plain) };
  const preview = previewImport(text, separator);
  return preview.rows === 0 && preview.broken.length === 0
    ? { kind: 'empty' }
    : { kind: 'table', preview };
}
