import type { TextField } from '../fields/Field.ts';
import type { ControlProps } from '../ui/FieldControl.ts';
import { heldText, LOG_FIELDS } from './logColumns.ts';
import { tableOf } from './tableOf.ts';
import { said } from './words.ts';

/** The columns of the table, each with its first cells, and what it is said to hold. */
export function ColumnsControl({ id, text, onText, texts = {} }: ControlProps<TextField>) {
  const { preview, held } = tableOf((texts.log ?? '').trim(), text.trim());
  if (preview.columns.length === 0) return <p class="wl-soft">{said.noColumns}</p>;
  const change = (column: number, field: string) =>
    onText(
      heldText(
        preview.columns.map((_, at) => (at === column ? field : (held[at] ?? ''))) as typeof held,
      ),
    );
  return (
    <>
      <p class="wl-soft">{said.table(preview.rows, said.separators[preview.separator])}</p>
      <ul class="wl-columns">
        {preview.columns.map(({ column, header, samples }) => (
          <li key={column}>
            <span class="wl-columns-cells">
              <strong>{header === '' ? said.column(column + 1) : header}</strong>
              <span class="wl-row-note">{samples.join(' · ')}</span>
            </span>
            <select
              id={`${id}-${column}`}
              class="wl-select"
              aria-label={said.holdsOf(header === '' ? said.column(column + 1) : header)}
              value={held[column] ?? ''}
              onChange={(event) => change(column, event.currentTarget.value)}
            >
              <option value="" selected={(held[column] ?? '') === ''}>
                {said.notRead}
              </option>
              {LOG_FIELDS.map((field) => (
                <option key={field} value={field} selected={held[column] === field}>
                  {said.holds[field]}
                </option>
              ))}
            </select>
          </li>
        ))}
      </ul>
    </>
  );
}
