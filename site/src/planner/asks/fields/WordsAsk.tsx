import { textAt } from '../../state/tree.ts';
import { useAsking } from '../Asking.ts';
import { idOf, problemsAt } from '../problemsAt.ts';
import { FieldFrame, type FieldProps } from './FieldFrame.tsx';

/** One line of text. */
export function WordsAsk(props: FieldProps) {
  const { at } = props;
  const { draft, problems, set } = useAsking();
  return (
    <FieldFrame {...props}>
      <span class="wl-box">
        <input
          id={idOf(at)}
          class="wl-input"
          type="text"
          autocomplete="off"
          value={textAt(draft, at)}
          aria-invalid={problemsAt(problems, at).length > 0 ? 'true' : undefined}
          aria-describedby={`${idOf(at)}-help`}
          onInput={(event) => set(at, event.currentTarget.value)}
        />
      </span>
    </FieldFrame>
  );
}
