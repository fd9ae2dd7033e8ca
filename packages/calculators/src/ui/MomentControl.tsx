import type { DateField, TimeField } from '../fields/Field.ts';
import type { ControlProps } from './FieldControl.ts';

/** A date or a time of day, with what the device has for choosing one. */
export function MomentControl(props: ControlProps<DateField | TimeField>) {
  const { id, field, text, onText, problems, label, isBare, describedBy } = props;
  return (
    <span class="wl-box">
      <input
        id={id}
        class="wl-input"
        type={field.kind}
        value={text}
        {...(field.kind === 'date' ? { min: field.min, max: field.max } : {})}
        aria-label={isBare ? label : undefined}
        aria-invalid={problems.length > 0 ? 'true' : undefined}
        aria-describedby={describedBy}
        onInput={(event) => onText(event.currentTarget.value)}
      />
    </span>
  );
}
