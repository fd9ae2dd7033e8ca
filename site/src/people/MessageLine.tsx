import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Message } from './Keeping.ts';
import { words } from './words.ts';

interface MessageLineProps {
  readonly message: Message;
  readonly onDismiss: () => void;
}

/**
 * What happened, with the way back where there is one. What went wrong and what can be taken back
 * stay in sight while the page is scrolled.
 */
export function MessageLine({ message, onDismiss }: MessageLineProps) {
  const { text, isWrong = false, undo } = message;
  const button = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => {
    // What was deleted had the focus: the way back takes it.
    if (undo) button.current?.focus();
  }, [undo]);
  return (
    <div
      class="say"
      data-wrong={isWrong ? 'true' : undefined}
      data-stays={isWrong || undo ? 'true' : undefined}
    >
      <p role={isWrong ? 'alert' : 'status'}>{text}</p>
      {undo && (
        <button ref={button} type="button" class="wl-button" onClick={undo}>
          {words.undo}
        </button>
      )}
      <button type="button" class="wl-remove" aria-label={words.dismiss} onClick={onDismiss}>
        <span aria-hidden="true">×</span>
      </button>
    </div>
  );
}
