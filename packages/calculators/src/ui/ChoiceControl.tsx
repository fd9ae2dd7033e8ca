import type { ChoiceField } from '../fields/Field.ts';
import type { ControlProps } from './FieldControl.ts';

/** A choice: side by side where there are few, a list where there are many or the row is narrow. */
export function ChoiceControl(props: ControlProps<ChoiceField>) {
  const { id, field, text, onText, problems, label, isBare, describedBy } = props;
  if (isBare || field.options.length > 4) {
    return (
      <select
        id={id}
        class="wl-select"
        aria-label={isBare ? label : undefined}
        aria-invalid={problems.length > 0 ? 'true' : undefined}
        aria-describedby={describedBy}
        value={text}
        onChange={(event) => onText(event.currentTarget.value)}
      >
        {problems.length > 0 && (
          <option value={text} selected>
            {text}
          </option>
        )}
        {field.options.map((option) => (
          <option key={option.id} value={option.id} selected={option.id === text}>
            {option.label}
          </option>
        ))}
      </select>
    );
  }
  return (
    <span class="wl-segments">
      {field.options.map((option) => (
        <label key={option.id} class="wl-segment">
          <input
            type="radio"
            name={id}
            value={option.id}
            checked={option.id === text}
            onChange={() => onText(option.id)}
          />
          <span>{option.label}</span>
        </label>
      ))}
    </span>
  );
}
