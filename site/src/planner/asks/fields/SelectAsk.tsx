import { useAsking } from '../Asking.ts';
import { idOf, problemsAt } from '../problemsAt.ts';
import { FieldFrame, type FieldProps } from './FieldFrame.tsx';

interface SelectAskProps extends FieldProps {
  /** Value and words of each choice. */
  readonly options: readonly (readonly [string, string])[];
  readonly value: string;
  readonly onValue: (value: string) => void;
}

/** One of several, from a list. A value that is not among them is kept and shown as it is. */
export function SelectAsk(props: SelectAskProps) {
  const { at, options, value, onValue } = props;
  const { problems } = useAsking();
  const isKnown = options.some(([id]) => id === value);
  const all = isKnown ? options : [[value, value] as const, ...options];
  return (
    <FieldFrame {...props}>
      <select
        id={idOf(at)}
        class="wl-select"
        value={value}
        aria-invalid={problemsAt(problems, at).length > 0 ? 'true' : undefined}
        aria-describedby={`${idOf(at)}-help`}
        onChange={(event) => onValue(event.currentTarget.value)}
      >
        {all.map(([id, name]) => (
          <option key={id} value={id} selected={id === value}>
            {name}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}
