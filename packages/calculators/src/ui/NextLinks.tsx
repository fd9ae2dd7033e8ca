import { asSearch } from '../address/encodeAddress.ts';
import type { NextLink } from '../contract/Answer.ts';
import { words } from '../words.ts';

interface NextLinksProps {
  readonly links: readonly NextLink[];
  /** Address of the folder of all calculators; `null` where there is none. */
  readonly tools: string | null;
  /** The calculator that is shown: a link to it changes its own inputs. */
  readonly own: string;
  readonly onTake: (carry: NextLink['carry']) => void;
}

/** The ways on: other calculators with the values carried along, or other values for this one. */
export function NextLinks({ links: all, tools, own, onTake }: NextLinksProps) {
  const links = all.filter(({ calculator }) => calculator === own || tools !== null);
  if (links.length === 0) return null;
  return (
    <nav class="wl-panel" aria-label={words.more.next}>
      <h2 class="wl-heading">{words.more.next}</h2>
      <ul class="wl-links">
        {links.map(({ calculator, label, carry }) => (
          <li key={label}>
            {calculator === own ? (
              <button type="button" onClick={() => onTake(carry)}>
                {label}
              </button>
            ) : (
              <a href={`${tools}${calculator}/${asSearch(new URLSearchParams(carry).toString())}`}>
                {label}
              </a>
            )}
          </li>
        ))}
      </ul>
    </nav>
  );
}
