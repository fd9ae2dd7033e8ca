import { useId, useState } from 'preact/hooks';
import { isName } from './isName.ts';
import { words } from './words.ts';

interface NameFieldProps {
  readonly name: string;
  readonly onName: (name: string) => Promise<boolean>;
}

/** The name of something kept. It is kept when the field is left; what cannot be a name stays typed. */
export function NameField({ name, onName }: NameFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState(name);
  const [known, setKnown] = useState(name);
  if (known !== name) {
    // Changed elsewhere: what is being typed here stays.
    setKnown(name);
    if (typed === known) setTyped(name);
  }
  const isWrong = !isName(typed);
  return (
    <div class="kept-field">
      <label for={id}>{words.people.name}</label>
      <span class="wl-box">
        <input
          id={id}
          class="wl-input"
          type="text"
          autocomplete="off"
          value={typed}
          aria-invalid={isWrong ? 'true' : undefined}
          aria-describedby={`${id}-help`}
          onInput={({ currentTarget: { value } }) => setTyped(value)}
          onChange={() => {
            if (!isWrong && typed.trim() !== name) void onName(typed.trim());
          }}
        />
      </span>
      <p class="kept-help" id={`${id}-help`} aria-live="polite">
        {isWrong && <span class="wl-mark">{words.wrongName}</span>}
      </p>
    </div>
  );
}
