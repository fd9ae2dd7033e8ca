import type { NumberField } from '../fields/Field.ts';
import type { ControlProps } from './FieldControl.ts';
import { Stepper } from './Stepper.tsx';
import { stepNumber } from './stepNumber.ts';
import { TextInput } from './TextInput.tsx';

/** A number with its unit between two step buttons. */
export function NumberControl(props: ControlProps<NumberField>) {
  const { id, field, text, onText, problems, label, isBare, describedBy } = props;
  const step = (direction: 1 | -1) => onText(stepNumber(field, text, direction));
  return (
    <Stepper label={label} onStep={step}>
      <span class="wl-box">
        <TextInput
          id={id}
          text={text}
          onText={onText}
          onStep={step}
          keyboard={field.step === 1 ? 'numeric' : 'decimal'}
          isWrong={problems.length > 0}
          {...(isBare ? { label } : {})}
          {...(describedBy ? { describedBy } : {})}
        />
        {field.unit !== '' && <span class="wl-unit">{field.unit}</span>}
      </span>
    </Stepper>
  );
}
