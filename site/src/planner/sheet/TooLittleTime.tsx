import { words } from '../words.ts';

/** In place of a session: why nothing fits into the time. */
export function TooLittleTime({ message }: { readonly message: string }) {
  return (
    <div class="ask-first">
      <p class="ask-first-title">{words.tooShort.title}</p>
      <p>{message}</p>
    </div>
  );
}
