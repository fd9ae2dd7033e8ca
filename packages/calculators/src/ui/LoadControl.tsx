import { useState } from 'preact/hooks';
import type { LoadField } from '../fields/Field.ts';
import { readDecimal } from '../fields/readDecimal.ts';
import { words } from '../words.ts';
import type { ControlProps } from './FieldControl.ts';
import { joinLoad, loadParts } from './loadText.ts';
import { Stepper } from './Stepper.tsx';
import { nextMultiple } from './stepNumber.ts';
import { TextInput } from './TextInput.tsx';

/** A load: number and unit. Typing a unit after the number changes it too; nothing is converted. */
export function LoadControl(props: ControlProps<LoadField>) {
  const { id, field, text, onText, problems, label, isBare, describedBy, equipmentStep } = props;
  const [emptyUnit, setEmptyUnit] = useState(field.default?.unit ?? 'kg');
  const { number, unit } = loadParts(text, emptyUnit);
  const step = (direction: 1 | -1) => {
    const from = readDecimal(number) ?? field.default?.value ?? 0;
    const [min, max] = unit === 'kg' ? [field.minKg, field.maxKg] : [-1e5, 1e5];
    const plain = nextMultiple(from, field.step[unit], direction, min, max);
    onText(equipmentStep?.(direction) ?? joinLoad({ number: plain, unit }));
  };
  return (
    <Stepper label={label} onStep={step}>
      <span class="wl-box">
        <TextInput
          id={id}
          text={number}
          onText={(typed) => onText(joinLoad(loadParts(typed, unit)))}
          onStep={step}
          keyboard="decimal"
          isWrong={problems.length > 0}
          {...(isBare ? { label } : {})}
          {...(describedBy ? { describedBy } : {})}
        />
        <select
          class="wl-unit-choice"
          aria-label={words.form.unitOf(label)}
          value={unit}
          onChange={(event) => {
            const chosen = event.currentTarget.value === 'lb' ? 'lb' : 'kg';
            setEmptyUnit(chosen);
            onText(joinLoad({ number, unit: chosen }));
          }}
        >
          <option value="kg" selected={unit === 'kg'}>
            {words.form.kg}
          </option>
          <option value="lb" selected={unit === 'lb'}>
            {words.form.lb}
          </option>
        </select>
      </span>
    </Stepper>
  );
}
