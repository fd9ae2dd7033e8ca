import { useState } from 'preact/hooks';
import { listAt } from '../../state/tree.ts';
import { useAsking } from '../Asking.ts';
import { idOf, problemsAt } from '../problemsAt.ts';
import { FieldFrame, type FieldProps } from './FieldFrame.tsx';

/** A list of texts, one on a line. Empty lines count for nothing but stay while they are typed. */
export function LinesAsk(props: FieldProps) {
  const { at } = props;
  const { draft, problems, set } = useAsking();
  const stored = listAt(draft, at).map(String);
  const [typed, setTyped] = useState(stored.join('\n'));
  const lines = linesOf(typed);
  const shown = lines.join('\n') === stored.join('\n') ? typed : stored.join('\n');
  return (
    <FieldFrame {...props}>
      <textarea
        id={idOf(at)}
        class="wl-input lines"
        rows={3}
        value={shown}
        aria-invalid={problemsAt(problems, at).length > 0 ? 'true' : undefined}
        aria-describedby={`${idOf(at)}-help`}
        onInput={({ currentTarget: { value } }) => {
          setTyped(value);
          const next = linesOf(value);
          set(at, next.length === 0 ? undefined : next);
        }}
      />
    </FieldFrame>
  );
}

function linesOf(text: string): readonly string[] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
}
