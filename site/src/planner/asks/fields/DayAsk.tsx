import { textAt } from '../../state/tree.ts';
import { useAsking } from '../Asking.ts';
import { idOf, problemsAt } from '../problemsAt.ts';
import { FieldFrame, type FieldProps } from './FieldFrame.tsx';

interface DayAskProps extends FieldProps {
  readonly isOptional?: boolean;
}

/** A calendar day. */
export function DayAsk(props: DayAskProps) {
  const { at, isOptional = false } = props;
  const { draft, problems, set } = useAsking();
  return (
    <FieldFrame {...props}>
      <span class="wl-box">
        <input
          id={idOf(at)}
          class="wl-input"
          type="date"
          value={textAt(draft, at)}
          aria-invalid={problemsAt(problems, at).length > 0 ? 'true' : undefined}
          aria-describedby={`${idOf(at)}-help`}
          onInput={({ currentTarget: { value } }) =>
            set(at, isOptional && value === '' ? undefined : value)
          }
        />
      </span>
    </FieldFrame>
  );
}
