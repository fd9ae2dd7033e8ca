import { useId, useState } from 'preact/hooks';
import { isName } from './isName.ts';
import { words } from './words.ts';

interface AddByNameProps {
  readonly label: string;
  /** Keeps something under this name; false where that did not work, and then the name stays typed. */
  readonly onAdd: (name: string) => Promise<boolean>;
}

/** One line to add a person or a gym with. */
export function AddByName({ label, onAdd }: AddByNameProps) {
  const id = useId();
  const [name, setName] = useState('');
  const [isAsked, setAsked] = useState(false);
  const isWrong = isAsked && !isName(name);
  const add = async () => {
    setAsked(true);
    if (!isName(name) || !(await onAdd(name.trim()))) return;
    setName('');
    setAsked(false);
  };
  return (
    <form
      class="add"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void add();
      }}
    >
      <label for={id}>{label}</label>
      <div class="add-line">
        <span class="wl-box">
          <input
            id={id}
            class="wl-input"
            type="text"
            autocomplete="off"
            value={name}
            aria-invalid={isWrong ? 'true' : undefined}
            aria-describedby={`${id}-help`}
            onInput={({ currentTarget: { value } }) => {
              setName(value);
              if (value === '') setAsked(false);
            }}
          />
        </span>
        <button type="submit" class="wl-button">
          {words.add}
        </button>
      </div>
      <p class="kept-help" id={`${id}-help`} aria-live="polite">
        {isWrong && <span class="wl-mark">{words.wrongName}</span>}
      </p>
    </form>
  );
}
