import type { WindowField } from '../fields/Field.ts';
import { words } from '../words.ts';
import type { ControlProps } from './FieldControl.ts';
import { Stepper } from './Stepper.tsx';
import { nextMultiple } from './stepNumber.ts';
import { TextInput } from './TextInput.tsx';

/** A window of counts: the lowest and the highest, each with its own steps. */
export function WindowControl(props: ControlProps<WindowField>) {
  const { id, field, text, onText, problems, label, describedBy } = props;
  const [low = '', high = low] = text.split(/[-\u2010-\u2015\u2212]/, 2);
  const ends = [
    { name: words.form.lowest, typed: low, join: (typed: string) => `${typed}-${high}` },
    { name: words.form.highest, typed: high, join: (typed: string) => `${low}-${typed}` },
  ];
  return (
    <span class="wl-window">
      {ends.map(({ name, typed, join }, place) => {
        const endLabel = words.form.windowEnd(label, name);
        const step = (direction: 1 | -1) => {
          const from = /^\s*\d+\s*$/.test(typed) ? Number(typed) : field.default.low;
          onText(join(nextMultiple(from, 1, direction, field.min, field.max)));
        };
        return (
          <Stepper key={name} label={endLabel} onStep={step}>
            <span class="wl-box">
              <TextInput
                id={place === 0 ? id : `${id}-high`}
                text={typed}
                onText={(next) => onText(join(next))}
                onStep={step}
                keyboard="numeric"
                isWrong={problems.length > 0}
                label={endLabel}
                {...(describedBy ? { describedBy } : {})}
              />
              <span class="wl-unit">{name}</span>
            </span>
          </Stepper>
        );
      })}
    </span>
  );
}
