import { useEffect, useRef } from 'preact/hooks';
import { words } from '../words.ts';
import type { ServedPart } from './below/handOver.ts';
import { kept } from './kept.ts';

interface RestProps {
  readonly is: 'there' | 'fetching' | 'failed';
  /** The page was served with what belongs here. */
  readonly isServed: boolean;
  /** Told of what was served, and when something in it is pressed. */
  readonly onServed: (served: ServedPart) => void;
}

/** Stands where more belongs below an answer, until that has been fetched and is used. */
export function Rest({ is, isServed, onServed }: RestProps) {
  const element = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const part = element.current;
    if (!isServed || !part) return;
    const press = ({ target }: Event) => {
      const pressed = (target as Element).closest('button, input, select, textarea');
      if (pressed) onServed({ part, pressed });
    };
    onServed({ part, pressed: null });
    part.addEventListener('click', press);
    return () => part.removeEventListener('click', press);
  }, [isServed]);
  if (isServed) return <div class="wl-more" ref={element} {...kept} />;
  return (
    <div class="wl-more" aria-busy={is === 'fetching'}>
      {is === 'failed' && (
        <p class="wl-notice" role="alert">
          {words.more.notFetched}
        </p>
      )}
    </div>
  );
}
