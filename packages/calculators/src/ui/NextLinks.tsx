import { asSearch } from '../address/encodeAddress.ts';
import type { NextLink } from '../contract/Answer.ts';
import { words } from '../words.ts';

interface NextLinksProps {
  readonly links: readonly NextLink[];
  /** Address of the folder of all calculators. */
  readonly tools: string;
}

/** The calculators that follow, with the values carried along in the address. */
export function NextLinks({ links, tools }: NextLinksProps) {
  if (links.length === 0) return null;
  return (
    <nav class="wl-panel" aria-label={words.more.next}>
      <h2 class="wl-heading">{words.more.next}</h2>
      <ul class="wl-links">
        {links.map(({ calculator, label, carry }) => (
          <li key={label}>
            <a href={`${tools}${calculator}/${asSearch(new URLSearchParams(carry).toString())}`}>
              {label}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
