import { words } from './words.ts';

/** What to try where nothing was found. */
export function Nothing({ base, isPanel }: { readonly base: string; readonly isPanel: boolean }) {
  const address = (query: string) => `${base}search/?${new URLSearchParams({ q: query })}`;
  return (
    <p class="found-nothing">
      {words.tryThis}{' '}
      {words.tryThese.map((word, at) => (
        <>
          {at > 0 && ', '}
          <a key={word} href={address(word)}>
            {word}
          </a>
        </>
      ))}
      {isPanel ? (
        <>
          {words.orAllBefore} <a href={`${base}search/`}>{words.orAll}</a>.
        </>
      ) : (
        words.orBelow
      )}
    </p>
  );
}
