import { useEffect, useRef } from 'preact/hooks';

interface PrimaryProps {
  readonly name: string;
  readonly hint?: string;
  /** The button takes the focus when this changes, so that one key goes through a session. */
  readonly focusOn: string | number;
  readonly disabled?: boolean;
  readonly onPress: () => void;
}

/** The one thing that comes next, under the thumb. */
export function Primary({ name, hint, focusOn, disabled = false, onPress }: PrimaryProps) {
  const button = useRef<HTMLButtonElement>(null);
  const isFirst = useRef(true);
  useEffect(() => {
    const wasInSession = document.activeElement !== document.body || !isFirst.current;
    isFirst.current = false;
    if (wasInSession) button.current?.focus({ preventScroll: true });
  }, [focusOn]);
  return (
    <button type="button" class="floor-primary" ref={button} disabled={disabled} onClick={onPress}>
      {name}
      {hint !== undefined && <small>{hint}</small>}
    </button>
  );
}
