import type { Hit } from './find.ts';
import { excerpt, marked, type Piece } from './marked.ts';

/** A place that was found: its name, where it belongs, and the words around what was meant. */
export function HitView({ hit, base }: { readonly hit: Hit; readonly base: string }) {
  const { path, title, section, text, matched } = hit;
  const of = section === '' ? entryOf(path) : title;
  return (
    <li>
      <a href={`${base}${path}`}>
        <Marked pieces={marked(section || title, matched)} />
      </a>
      {of && <span class="found-of">{of}</span>}
      <p>
        <Marked pieces={excerpt(text, matched)} />
      </p>
    </li>
  );
}

/** The entry of the library that a page of the reference is about. */
function entryOf(path: string): string | undefined {
  return /^developers\/reference\/([^/]+)\/./.exec(path)?.[1];
}

function Marked({ pieces }: { readonly pieces: readonly Piece[] }) {
  return <>{pieces.map(({ text, isHit }, at) => (isHit ? <mark key={at}>{text}</mark> : text))}</>;
}
