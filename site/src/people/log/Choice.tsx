import { useId } from 'preact/hooks';

interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly help?: string;
  readonly value: Value;
  /** Value and words of each choice. */
  readonly options: readonly (readonly [Value, string])[];
  readonly onValue: (value: Value) => void;
}

/** One of several, from a list. */
export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const { label, help, value, options, onValue } = props;
  const id = useId();
  return (
    <div class="kept-field">
      <label for={id}>{label}</label>
      <select
        id={id}
        class="wl-select"
        value={value}
        aria-describedby={help === undefined ? undefined : `${id}-help`}
        onChange={({ currentTarget }) => {
          const chosen = options.find(([one]) => one === currentTarget.value);
          if (chosen) onValue(chosen[0]);
        }}
      >
        {options.map(([one, words]) => (
          <option key={one} value={one} selected={one === value}>
            {words}
          </option>
        ))}
      </select>
      {help !== undefined && (
        <p class="kept-help" id={`${id}-help`}>
          {help}
        </p>
      )}
    </div>
  );
}
