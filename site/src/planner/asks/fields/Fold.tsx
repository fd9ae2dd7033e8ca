import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Path } from '../../state/tree.ts';
import { useAsking } from '../Asking.ts';
import { problemsAt } from '../problemsAt.ts';

interface FoldProps {
  readonly title: string;
  /** What was answered so far, in a few words. */
  readonly answer?: string;
  /** Places of what is inside: the fold opens by itself where something there is wrong. */
  readonly places: readonly Path[];
  readonly children: ComponentChildren;
}

/** Questions behind one line that says what they ask and what was answered; made when it is opened. */
export function Fold({ title, answer, places, children }: FoldProps) {
  const { problems } = useAsking();
  const element = useRef<HTMLDetailsElement>(null);
  const [isOpen, setOpen] = useState(false);
  const isWrong = places.some((place) => problemsAt(problems, place).length > 0);
  useEffect(() => {
    if (isWrong && element.current) element.current.open = true;
  }, [isWrong]);
  return (
    <details class="fold" ref={element} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span class="fold-title">{title}</span>
        {answer !== undefined && <span class="fold-answer">{answer}</span>}
      </summary>
      {isOpen && <div class="fold-inside">{children}</div>}
    </details>
  );
}
