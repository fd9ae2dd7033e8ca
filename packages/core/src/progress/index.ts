export type { DateOrder } from './cells/readDate.ts';
export { importLog } from './importLog.ts';
export type { ImportedLog, LoggedSet, UnreadRow } from './LoggedSet.ts';
export type { LogColumns, LogField, LogMapping } from './LogMapping.ts';
export { logCsvColumns } from './logCsvColumns.ts';
export { type MovedLoad, type MovedLoadContext, movedLoad } from './movedLoad.ts';
export {
  type ColumnPreview,
  type ImportPreview,
  type ImportQuestion,
  previewImport,
} from './previewImport.ts';
export { readLogCsv } from './readLogCsv.ts';
export { readLogJson } from './readLogJson.ts';
export type { BrokenRow, Separator } from './table/Table.ts';
export { writeLogCsv } from './writeLogCsv.ts';
export { type LogFile, writeLogJson } from './writeLogJson.ts';
