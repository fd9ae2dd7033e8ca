import type {
  DateOrder,
  ImportPreview,
  LogColumns,
  LogField,
  LoggedSet,
  LogMapping,
} from '@windlass/core/progress';

/** What a person has said about a table. */
export interface TableChoice {
  /** What each column holds, in order; nothing for one that is left out. */
  readonly columns: readonly (LogField | '')[];
  readonly dateOrder: DateOrder | '';
  readonly hasShortYears: boolean;
  readonly unit: 'kg' | 'lb';
  readonly counts: LoggedSet['counts'];
}

const needed = ['date', 'exercise', 'load', 'reps'] as const satisfies readonly LogField[];

/** What the table itself leaves no doubt about. */
export function firstChoice(
  { columns, suggestion }: ImportPreview,
  unit: TableChoice['unit'],
): TableChoice {
  const fieldOf = (column: number) => needed.find((field) => suggestion[field] === column) ?? '';
  return {
    columns: columns.map(({ column }) => fieldOf(column)),
    dateOrder: '',
    hasShortYears: true,
    unit,
    counts: 'total',
  };
}

/** The choice with another content of a column. What it holds now, no other column holds. */
export function setColumn(choice: TableChoice, column: number, field: LogField | ''): TableChoice {
  const columns = choice.columns.map((other, place) =>
    place === column ? field : other === field ? '' : other,
  );
  return { ...choice, columns };
}

/** How to read the table, or the fields that no column holds yet. */
export function mappingOf(
  choice: TableChoice,
  { separator }: ImportPreview,
): LogMapping | { readonly missing: readonly LogField[] } {
  const missing = needed.filter((field) => !choice.columns.includes(field));
  if (missing.length > 0) return { missing };
  const columns = Object.fromEntries(
    choice.columns.flatMap((field, column) => (field === '' ? [] : [[field, column]])),
  ) as LogColumns;
  return {
    columns,
    separator,
    unit: choice.unit,
    counts: choice.counts,
    ...(choice.dateOrder !== '' && { dateOrder: choice.dateOrder }),
    ...(choice.hasShortYears && { shortYearsFrom: 1970 }),
  };
}
