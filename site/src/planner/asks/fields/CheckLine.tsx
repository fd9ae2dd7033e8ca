interface CheckLineProps {
  readonly isOn: boolean;
  readonly onToggle: (isOn: boolean) => void;
  readonly label: string;
}

/** A box to tick, as large as a finger. */
export function CheckLine({ isOn, onToggle, label }: CheckLineProps) {
  return (
    <label class="check">
      <input
        type="checkbox"
        checked={isOn}
        onChange={(event) => onToggle(event.currentTarget.checked)}
      />
      <span>{label}</span>
    </label>
  );
}
