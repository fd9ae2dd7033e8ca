import { words } from '../words.ts';
import { kept } from './kept.ts';

interface RestProps {
  readonly is: 'there' | 'fetching' | 'failed';
  /** The page was served with what belongs here. */
  readonly isServed: boolean;
}

/** Stands where more belongs below an answer, until that has been fetched. */
export function Rest({ is, isServed }: RestProps) {
  if (isServed) return <div class="wl-more" {...kept} />;
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
