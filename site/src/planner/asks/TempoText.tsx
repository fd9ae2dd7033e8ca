import { TextInput } from '@windlass/calculators/ui';
import { tempoFile, tempoOrderAt, tempoTextAt } from '../state/tempoEdits.ts';
import { useAsking } from './Asking.ts';
import { FieldFrame, type FieldProps } from './fields/FieldFrame.tsx';
import { idOf, problemsAt } from './problemsAt.ts';

interface TempoTextProps extends FieldProps {
  readonly isOptional?: boolean;
}

/** A tempo as one line of text. */
export function TempoText(props: TempoTextProps) {
  const { at, isOptional = false } = props;
  const { draft, problems, set } = useAsking();
  const order = tempoOrderAt(draft, at);
  return (
    <FieldFrame {...props}>
      <span class="wl-box">
        <TextInput
          id={idOf(at)}
          text={tempoTextAt(draft, at)}
          onText={(text) =>
            set(at, isOptional && text.trim() === '' ? undefined : tempoFile(text, order))
          }
          keyboard="text"
          isWrong={problemsAt(problems, at).length > 0}
          describedBy={`${idOf(at)}-help`}
        />
      </span>
    </FieldFrame>
  );
}
