import { useState } from 'preact/hooks';
import type { TextField } from '../fields/Field.ts';
import type { ControlProps } from '../ui/FieldControl.ts';
import { IN_ADDRESS } from './logSizes.ts';
import { said } from './words.ts';

/** More than this is named by its size instead of being written out. */
const WRITTEN_OUT = 60_000;

/** A log to paste, or to take from a file; how long it is, and what that means for the address. */
export function LogControl(props: ControlProps<TextField>) {
  const { id, field, text, onText, problems, label, describedBy } = props;
  const [notice, setNotice] = useState('');
  const open = async (input: HTMLInputElement) => {
    const [file] = input.files ?? [];
    input.value = '';
    if (file === undefined) return;
    if (file.size > 4 * field.maxLength) return setNotice(said.tooLarge);
    setNotice(said.reading(file.name));
    const content = await file.text();
    // what is being done is painted before it is done
    requestAnimationFrame(() =>
      setTimeout(() => {
        onText(content);
        setNotice(said.opened(file.name));
      }),
    );
  };
  const isLong = text.length > WRITTEN_OUT;
  return (
    <span class="wl-log">
      {isLong ? (
        <output class="wl-soft" for={id}>
          {said.long(Math.round(text.length / 1000))}
        </output>
      ) : (
        <textarea
          id={id}
          class="wl-textarea"
          rows={8}
          wrap="off"
          spellcheck={false}
          autocapitalize="off"
          autocomplete="off"
          aria-label={label}
          aria-invalid={problems.length > 0 ? 'true' : undefined}
          aria-describedby={describedBy}
          value={text}
          onInput={(event) => onText(event.currentTarget.value)}
        />
      )}
      <span class="wl-actions">
        <label class="wl-button wl-file">
          <input
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            onChange={(event) => void open(event.currentTarget)}
          />
          <span>{said.open}</span>
        </label>
        <button type="button" class="wl-button" disabled={text === ''} onClick={() => onText('')}>
          {said.clear}
        </button>
      </span>
      <span class="wl-soft" role="note">
        {notice} {text.length > IN_ADDRESS ? said.notInAddress : ''}
      </span>
    </span>
  );
}
