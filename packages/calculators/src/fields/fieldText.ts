import type { LoadValue } from '@windlass/core/load';
import type { CountWindow, Field, RowsField } from './Field.ts';
import { joinRows } from './rowTexts.ts';

/** The canonical text of a field's value: `readField` gives the value back from it. */
export function fieldText(field: Field, value: unknown): string {
  if (value === null) return '';
  switch (field.kind) {
    case 'number':
      return String(value);
    case 'load':
      return loadText(value as LoadValue);
    case 'window':
      return windowText(value as CountWindow);
    case 'tempo':
    case 'choice':
    case 'text':
    case 'date':
    case 'time':
      return value as string;
    case 'many':
      return (value as readonly string[]).join(',');
    case 'rows':
      return rowsText(field, value as RowsField['default']);
  }
}

/** `62.5kg`: a load as it stands in an address. */
export function loadText({ value, unit }: LoadValue): string {
  return `${value}${unit}`;
}

/** `6-10`, or `8` for a window of one count. */
export function windowText({ low, high }: CountWindow): string {
  return low === high ? String(low) : `${low}-${high}`;
}

function rowsText(field: RowsField, rows: RowsField['default']): string {
  const columns = Object.entries(field.columns);
  return joinRows(rows.map((row) => columns.map(([name, column]) => fieldText(column, row[name]))));
}
