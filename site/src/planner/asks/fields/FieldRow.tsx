import type { ComponentChildren } from 'preact';
import type { Path } from '../../state/tree.ts';
import { useAsking } from '../Asking.ts';
import { idOf, problemsAt } from '../problemsAt.ts';
import { HelpLine, type HelpLineProps } from './HelpLine.tsx';

interface FieldRowProps {
  /** Places of the fields in the row. */
  readonly at: readonly [Path, ...Path[]];
  readonly help?: string;
  readonly lines?: HelpLineProps['lines'];
  readonly layout?: 'pair' | 'load' | 'tempo';
  readonly children: ComponentChildren;
}

/** Fields side by side, with one line of help for all of them. */
export function FieldRow({ at, help, lines, layout = 'pair', children }: FieldRowProps) {
  const { problems } = useAsking();
  const found = at.flatMap((path) => problemsAt(problems, path));
  return (
    <div class="ask-group">
      <div class="ask-row" data-layout={layout}>
        {children}
      </div>
      <HelpLine
        id={`${idOf(at[0])}-help`}
        problems={found}
        {...(help !== undefined && { help })}
        {...(lines !== undefined && { lines })}
      />
    </div>
  );
}
