import type { Problem } from '@windlass/core/basis';

export interface HelpLineProps {
  readonly id: string;
  readonly help?: string;
  /** Lines that are kept free for the help; what would be right lies over what follows. */
  readonly lines?: 0 | 1 | 2;
  readonly problems: readonly Problem[];
}

/** Below a field: help, or what would be right. Nothing moves when one takes the other's place. */
export function HelpLine({ id, help = '', lines = help === '' ? 0 : 1, problems }: HelpLineProps) {
  const isWrong = problems.length > 0;
  const messages = [...new Set(problems.map(({ message }) => message))];
  return (
    <div class="ask-line" data-lines={lines}>
      <p class="ask-help" id={id} aria-live="polite" data-wrong={isWrong ? 'true' : undefined}>
        {isWrong && <span aria-hidden="true">▲ </span>}
        {isWrong ? messages.join(' ') : help}
      </p>
    </div>
  );
}
