import type { ManyField } from '../fields/Field.ts';
import type { ControlProps } from './FieldControl.ts';

/** Choices of which any number may hold at once, each with its own box. */
export function ManyControl({ id, field, text, onText }: ControlProps<ManyField>) {
  const chosen = text.split(',').map((one) => one.trim());
  const ids = field.options.map((option) => option.id);
  const change = (option: string, isOn: boolean) =>
    onText(ids.filter((one) => (one === option ? isOn : chosen.includes(one))).join(','));
  return (
    <span class="wl-many">
      {field.options.map((option) => (
        <label key={option.id} class="wl-check">
          <input
            type="checkbox"
            name={id}
            value={option.id}
            checked={chosen.includes(option.id)}
            onChange={(event) => change(option.id, event.currentTarget.checked)}
          />
          <span>{option.label}</span>
        </label>
      ))}
    </span>
  );
}
