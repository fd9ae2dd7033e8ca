import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import { words } from './words.ts';

interface LeafProps {
  /** What the questions are about; names them for those who do not see the page. */
  readonly name: string;
  /** What the button says that opens the questions on a phone. */
  readonly button: string;
  /** The result in a few words: stays in sight on a phone while its questions are answered. */
  readonly brief: string;
  readonly sheet: ComponentChildren;
  readonly asks: ComponentChildren;
}

/**
 * A part of the sheet, with what it is worked out from: beside it where there is room, under it
 * and behind a button where there is not.
 */
export function Leaf({ name, button, brief, sheet, asks }: LeafProps) {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  return (
    <section class="leaf">
      <div class="leaf-sheet">{sheet}</div>
      <button
        type="button"
        class="wl-button leaf-change"
        aria-expanded={isOpen}
        aria-controls={id}
        onClick={() => setOpen(!isOpen)}
      >
        {isOpen ? words.actions.close : button}
        <span class="visually-hidden"> {name}</span>
      </button>
      <fieldset class="leaf-asks" id={id} data-open={isOpen ? 'true' : undefined}>
        <legend class="visually-hidden">{name}</legend>
        <p class="leaf-brief" aria-hidden="true">
          {brief}
        </p>
        {asks}
      </fieldset>
    </section>
  );
}
