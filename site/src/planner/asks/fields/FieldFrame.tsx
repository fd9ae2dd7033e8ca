import type { ComponentChildren } from 'preact';
import type { Path } from '../../state/tree.ts';
import { useAsking } from '../Asking.ts';
import { idOf, problemsAt } from '../problemsAt.ts';
import { HelpLine } from './HelpLine.tsx';

export interface FieldProps {
  readonly at: Path;
  readonly label: string;
  readonly help?: string;
  /** Part of a row that has one line of help for all of its fields. */
  readonly isPart?: boolean;
}

interface FieldFrameProps extends FieldProps {
  readonly children: ComponentChildren;
}

/** A field with its label above and its help below. */
export function FieldFrame({ at, label, help, isPart = false, children }: FieldFrameProps) {
  const { problems } = useAsking();
  const id = idOf(at);
  return (
    <div class="ask">
      <label class="ask-label" for={id}>
        {label}
      </label>
      {children}
      {!isPart && (
        <HelpLine
          id={`${id}-help`}
          problems={problemsAt(problems, at)}
          {...(help !== undefined && { help })}
        />
      )}
    </div>
  );
}
