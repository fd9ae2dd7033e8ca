import { useLayoutEffect, useRef } from 'preact/hooks';
import { useFloor } from './FloorContext.ts';

interface PrimaryProps {
  readonly name: string;
  readonly hint?: string;
  /** With each change of it the button takes the focus, so that one key goes through a session. */
  readonly focusOn: string | number;
  readonly disabled?: boolean;
  readonly onPress: () => void;
}

/** The one thing that comes next, under the thumb. */
export function Primary({ name, hint, focusOn, disabled = false, onPress }: PrimaryProps) {
  const { effective } = useFloor();
  const button = useRef<HTMLButtonElement>(null);
  const isUnderWay = effective.events.length > 0;
  useLayoutEffect(() => {
    if (isUnderWay) button.current?.focus({ preventScroll: true });
  }, [focusOn]);
  return (
    <button type="button" class="floor-primary" ref={button} disabled={disabled} onClick={onPress}>
      {name}
      {hint !== undefined && <small>{hint}</small>}
    </button>
  );
}
