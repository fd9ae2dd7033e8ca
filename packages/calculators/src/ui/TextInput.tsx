interface TextInputProps {
  readonly id: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly onStep?: (direction: 1 | -1) => void;
  /** `numeric` for whole numbers, `decimal` where a comma or point is needed, `text` for codes. */
  readonly keyboard: 'numeric' | 'decimal' | 'text';
  readonly isWrong: boolean;
  /** For a part of a field whose visible label belongs to the whole. */
  readonly label?: string;
  readonly describedBy?: string;
}

/** One line of text that keeps exactly what was typed; arrow keys step. */
export function TextInput(props: TextInputProps) {
  const { id, text, onText, onStep, keyboard, isWrong, label, describedBy } = props;
  return (
    <input
      id={id}
      class="wl-input"
      type="text"
      inputMode={keyboard}
      autocomplete="off"
      autocapitalize="off"
      spellcheck={false}
      enterkeyhint="done"
      value={text}
      aria-label={label}
      aria-invalid={isWrong ? 'true' : undefined}
      aria-describedby={describedBy}
      onInput={(event) => onText(event.currentTarget.value)}
      onKeyDown={(event) => {
        const direction = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
        if (direction === 0 || !onStep) return;
        event.preventDefault();
        onStep(direction);
      }}
    />
  );
}
