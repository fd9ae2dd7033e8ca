import { words } from '../words.ts';

interface RestProps {
  readonly is: 'fetching' | 'failed';
  /** The page was served with what belongs here. */
  readonly isServed: boolean;
}

/** Stands where more belongs below an answer, until that has been fetched. */
export function Rest({ is, isServed }: RestProps) {
  if (isServed) {
    // Nothing is set: an element that is told so keeps the markup it was served with.
    return <div class="wl-more" dangerouslySetInnerHTML={{ __html: '' }} />;
  }
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
