import { useState } from 'preact/hooks';
import { Snippet } from './foldedParts.ts';
import type { Json } from './state/tree.ts';
import { words } from './words.ts';

/** The same plan as a program, behind one line. */
export function Code({ draft }: { readonly draft: Json }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details class="fold code" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span class="fold-title">{words.code.title}</span>
      </summary>
      {isOpen && <Snippet draft={draft} />}
    </details>
  );
}
