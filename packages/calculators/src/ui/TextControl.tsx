import type { TextField } from '../fields/Field.ts';
import type { ControlProps } from './FieldControl.ts';
import { TextInput } from './TextInput.tsx';

/** One line of words. */
export function TextControl(props: ControlProps<TextField>) {
  const { id, text, onText, problems, label, isBare, describedBy } = props;
  return (
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
  );
}
