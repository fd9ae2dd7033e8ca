import type { TempoField } from '../fields/Field.ts';
import { words } from '../words.ts';
import type { ControlProps } from './FieldControl.ts';
import { TextInput } from './TextInput.tsx';
import { stepTempoPart, tempoParts } from './tempoParts.ts';

/** A tempo as text, with a stepper for each of its four parts where there is room for them. */
export function TempoControl(props: ControlProps<TempoField>) {
  const { id, field, text, onText, problems, label, isBare, describedBy, texts = {} } = props;
  const isLiftFirst = field.orderFrom !== undefined && texts[field.orderFrom] === 'lift-first';
  const order = isLiftFirst ? 'lift-first' : 'lower-first';
  return (
    <span class="wl-tempo">
      <span class="wl-box">
        <TextInput
          id={id}
          text={text}
          onText={onText}
          keyboard="text"
          isWrong={problems.length > 0}
          {...(isBare ? { label } : {})}
          {...(describedBy ? { describedBy } : {})}
        />
      </span>
      {!isBare && (
        <span class="wl-phases">
          {tempoParts(text, order).map((part, place) => {
            const name = words.form.part(label, words.phases[part.phase]);
            return (
              <span key={part.phase} class="wl-phase">
                <span class="wl-phase-name">{words.phases[part.phase]}</span>
                <button
                  type="button"
                  class="wl-step"
                  aria-label={words.form.more(name)}
                  onClick={() => onText(stepTempoPart(text, order, place, 1))}
                >
                  <span aria-hidden="true">+</span>
                </button>
                <output class="wl-phase-value" for={id}>
                  {part.text}
                </output>
                <button
                  type="button"
                  class="wl-step"
                  aria-label={words.form.less(name)}
                  onClick={() => onText(stepTempoPart(text, order, place, -1))}
                >
                  <span aria-hidden="true">−</span>
                </button>
              </span>
            );
          })}
        </span>
      )}
    </span>
  );
}
