import { useRef, useState } from 'preact/hooks';
import type { ChoiceField } from '../fields/Field.ts';
import { words } from '../words.ts';
import type { ControlProps } from './FieldControl.ts';
import { matchingOptions } from './matchingOptions.ts';

/** A choice from a long list: a few letters narrow it, arrows and Enter or a tap take one. */
export function SearchControl(props: ControlProps<ChoiceField>) {
  const { id, field, text, onText, problems, label, isBare, describedBy } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const [at, setAt] = useState(0);
  const list = useRef<HTMLDivElement>(null);
  const chosen = field.options.find((option) => option.id === text);
  const isOpen = typed !== null;
  const found = isOpen ? matchingOptions(field.options, typed) : [];
  const close = () => setTyped(null);
  const take = (option: string | undefined) => {
    if (option !== undefined) onText(option);
    close();
  };
  const move = (to: number) => {
    const next = Math.min(found.length - 1, Math.max(0, to));
    setAt(next);
    list.current?.children[next]?.scrollIntoView({ block: 'nearest' });
  };
  const open = () => {
    setTyped('');
    setAt(Math.max(0, chosen ? field.options.indexOf(chosen) : 0));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape') close();
    else if (event.key === 'Enter') take(found[at]?.id);
    else if (event.key === 'ArrowDown') isOpen ? move(at + 1) : open();
    else if (event.key === 'ArrowUp') move(at - 1);
    else return;
    event.preventDefault();
  };
  return (
    <span class="wl-search">
      <input
        id={id}
        class="wl-input"
        type="text"
        role="combobox"
        aria-label={isBare ? label : undefined}
        aria-autocomplete="list"
        aria-expanded={isOpen}
        aria-controls={isOpen ? `${id}-list` : undefined}
        aria-activedescendant={isOpen && found[at] ? `${id}-${found[at].id}` : undefined}
        aria-invalid={problems.length > 0 ? 'true' : undefined}
        aria-describedby={describedBy}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        value={typed ?? chosen?.label ?? text}
        placeholder={chosen?.label}
        onFocus={(event) => event.currentTarget.select()}
        onClick={open}
        onInput={(event) => {
          setTyped(event.currentTarget.value);
          setAt(0);
        }}
        onKeyDown={onKeyDown}
        onBlur={close}
      />
      {isOpen && (
        <div id={`${id}-list`} class="wl-found" role="listbox" aria-label={label} ref={list}>
          {found.map((option, place) => (
            <button
              key={option.id}
              id={`${id}-${option.id}`}
              type="button"
              role="option"
              tabIndex={-1}
              aria-selected={option.id === text}
              data-at={place === at ? 'true' : undefined}
              onPointerDown={(event) => event.preventDefault()}
              onClick={() => take(option.id)}
            >
              {option.label}
            </button>
          ))}
        </div>
      )}
      {isOpen && found.length === 0 && <p class="wl-found">{words.form.noneFound}</p>}
    </span>
  );
}
