import { useState } from 'preact/hooks';
import { below } from './below/words.ts';

interface CopyButtonProps {
  readonly label: string;
  readonly text: () => string;
}

/** Copies a text; where the browser forbids that, the text is shown to be copied by hand. */
export function CopyButton({ label, text }: CopyButtonProps) {
  const [state, setState] = useState<'ready' | 'copied' | { readonly byHand: string }>('ready');
  const copy = async () => {
    const wanted = text();
    try {
      await navigator.clipboard.writeText(wanted);
      setState('copied');
    } catch {
      setState({ byHand: wanted });
    }
  };
  return (
    <span class="wl-copy">
      <button type="button" class="wl-button" onClick={copy}>
        {label}
      </button>
      <span class="wl-copied" aria-live="polite">
        {state === 'copied' && below.copied}
        {typeof state === 'object' && (
          <label class="wl-by-hand">
            {below.copyByHand}
            <input class="wl-input" type="text" readOnly value={state.byHand} />
          </label>
        )}
      </span>
    </span>
  );
}
