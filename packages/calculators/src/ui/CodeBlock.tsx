import { below } from './below/words.ts';
import { CopyButton } from './CopyButton.tsx';

/** Code that gives the same result, to read and to copy. */
export function CodeBlock({ code }: { readonly code: string }) {
  return (
    <section class="wl-panel wl-no-print">
      <h2 class="wl-heading">{below.snippet}</h2>
      <pre class="wl-code">
        <code>{code}</code>
      </pre>
      <CopyButton label={below.copyCode} text={() => code} />
    </section>
  );
}
