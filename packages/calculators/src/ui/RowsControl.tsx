import { isShown } from '../contract/isShown.ts';
import type { RowsField } from '../fields/Field.ts';
import { fieldText } from '../fields/fieldText.ts';
import { joinRows, rowTexts } from '../fields/rowTexts.ts';
import { words } from '../words.ts';
import type { ControlProps } from './FieldControl.ts';
import { ScalarControl } from './ScalarControl.tsx';

/** Rows of like things: plates by the piece, sets done. */
export function RowsControl(props: ControlProps<RowsField>) {
  const { id, field, text, onText, problems, texts = {}, newRow } = props;
  const columns = Object.entries(field.columns);
  const rows = rowTexts(text).map((cells) => columns.map((_, place) => cells[place] ?? ''));
  const fresh = columns.map(([, column]) => fieldText(column, column.default));
  const change = (row: number, place: number, cell: string) =>
    onText(joinRows(rows.map((cells, at) => (at === row ? cells.with(place, cell) : cells))));
  const remove = (row: number) => (
    <button
      type="button"
      class="wl-remove"
      disabled={rows.length <= field.minRows}
      aria-label={words.form.remove(field.rowName, row + 1)}
      onClick={() => onText(joinRows(rows.toSpliced(row, 1)))}
    >
      <span aria-hidden="true">×</span>
    </button>
  );
  return (
    <div class="wl-rows" data-layout={field.layout}>
      <div class="wl-row-list">
        {rows.map((cells, row) => (
          <fieldset key={row} class="wl-row" aria-label={words.form.row(field.rowName, row + 1)}>
            {field.layout === 'card' && (
              <div class="wl-row-head">
                <span aria-hidden="true">{words.form.row(field.rowName, row + 1)}</span>
                {remove(row)}
              </div>
            )}
            {columns.map(([name, column], place) =>
              !isShown(column, texts) ? null : (
                <div key={name} class="wl-cell" data-kind={column.kind}>
                  {field.layout === 'card' && (
                    <span class="wl-cell-label" aria-hidden="true">
                      {column.label}
                    </span>
                  )}
                  <ScalarControl
                    id={`${id}-${row}-${name}`}
                    field={column}
                    text={cells[place] ?? ''}
                    onText={(cell) => change(row, place, cell)}
                    problems={problems.filter(({ path }) => path[0] === row && path[1] === name)}
                    label={words.form.cell(field.rowName, row + 1, column.label)}
                    isBare
                    describedBy={`${id}-help`}
                  />
                </div>
              ),
            )}
            {field.layout === 'line' && remove(row)}
            {problems
              .filter(({ path }) => path[0] === row)
              .map(({ message }) => (
                <p key={message} class="wl-help" data-wrong="true" aria-hidden="true">
                  <span class="wl-mark" />
                  {message}
                </p>
              ))}
          </fieldset>
        ))}
      </div>
      <button
        type="button"
        class="wl-button"
        disabled={rows.length >= field.maxRows}
        onClick={() => onText(joinRows([...rows, newRow?.() ?? rows.at(-1) ?? fresh]))}
      >
        {words.form.add(field.rowName)}
      </button>
    </div>
  );
}
