import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import { words } from './words.ts';

interface EntryProps {
  readonly name: string;
  readonly brief: string;
  readonly count: ComponentChildren;
  /** The way to the planner. */
  readonly go: { readonly href: string; readonly label: string; readonly says: string };
  /** Made when it is opened. */
  readonly more: () => ComponentChildren;
}

/** Something kept, as one entry of a list: what it is, the way to a plan, and more on a press. */
export function Entry({ name, brief, count, go, more }: EntryProps) {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  return (
    <li class="entry">
      <div class="entry-head">
        <h3>{name}</h3>
        <p class="entry-brief">{brief}</p>
      </div>
      <p class="entry-count">{count}</p>
      <div class="entry-actions">
        <a class="wl-button entry-go" href={go.href} aria-label={go.label}>
          {go.says}
        </a>
        <button
          type="button"
          class="wl-button"
          aria-expanded={isOpen}
          aria-controls={id}
          aria-label={words.people.moreOf(name)}
          onClick={() => setOpen(!isOpen)}
        >
          {words.people.more}
        </button>
      </div>
      <div id={id} class="entry-more" hidden={!isOpen}>
        {isOpen && more()}
      </div>
    </li>
  );
}
