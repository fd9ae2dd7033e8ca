import { useCallback, useEffect, useRef } from 'preact/hooks';
import { decodePlan, type PlanLink } from './link/decodePlan.ts';
import { encodePlan } from './link/encodePlan.ts';
import { rememberedUnit } from './link/rememberedUnit.ts';
import { examples, firstExample } from './state/examples.ts';
import { inUnit } from './state/inUnit.ts';
import { type Json, textAt } from './state/tree.ts';

interface PlanLinkUse {
  readonly draft: Json;
  /** The page was opened with this draft in its link. */
  readonly onStart: (draft: Json) => void;
  /** Another link was gone to, that holds this draft. */
  readonly onDraft: (draft: Json) => void;
  /** The address that the page was opened at has been read. */
  readonly onRead: () => void;
  /** A link was opened that cannot be read. */
  readonly onUnreadable: (kind: 'newer' | 'damaged') => void;
}

const QUIET_MILLISECONDS = 120;

/**
 * Keeps the draft in the address after `#` and reads it from there. A link that cannot be read
 * stays in the address until something is changed, and in the browser's history after that.
 *
 * @returns the address of what is on the page.
 */
export function usePlanLink(use: PlanLinkUse): () => string {
  const { draft } = use;
  /** The fragment in the address that was read or written last. */
  const own = useRef<string | null>(null);
  /** The draft that stands on the page in place of a link that could not be read. */
  const standIn = useRef<Json | null>(null);
  const fragment = useRef('');
  const latest = useRef(use);
  latest.current = use;

  useEffect(() => {
    const read = async () => {
      const found = location.hash.replace(/^#/, '');
      if (found === own.current) return;
      const link = await decodePlan(found);
      const isReturn = own.current !== null;
      const isPlaceOnPage = link.kind === 'nothing' && found !== '' && isReturn;
      if (isPlaceOnPage) return write(own.current ?? '', 'replace');
      own.current = found;
      standIn.current = null;
      const opened = draftOf(link, isReturn);
      if (opened !== null) return latest.current[isReturn ? 'onDraft' : 'onStart'](opened);
      if (link.kind !== 'newer' && link.kind !== 'damaged') return;
      standIn.current = latest.current.draft;
      latest.current.onUnreadable(link.kind);
    };
    void read().then(() => latest.current.onRead());
    addEventListener('hashchange', read);
    return () => removeEventListener('hashchange', read);
  }, []);

  useEffect(() => {
    const timer = setTimeout(async () => {
      const next = await encodePlan(draft);
      if (draft !== latest.current.draft) return;
      fragment.current = next;
      if (own.current === null || own.current === next || standIn.current === draft) return;
      write(next, standIn.current === null ? 'replace' : 'push');
      own.current = next;
      standIn.current = null;
    }, QUIET_MILLISECONDS);
    return () => clearTimeout(timer);
  }, [draft]);

  return useCallback(() => new URL(addressOf(fragment.current), location.href).href, []);
}

/**
 * The draft of a link, where it is not the one that the page shows already. The bare address is the
 * first example, in the unit that was asked for last.
 */
function draftOf(link: PlanLink, isReturn: boolean): Json | null {
  if (link.kind === 'plan') return link.draft;
  if (link.kind === 'example') return examples[link.id];
  const unit = rememberedUnit();
  const isShown = !isReturn && (unit === null || unit === textAt(firstExample, ['intent', 'unit']));
  if (link.kind !== 'nothing' || isShown) return null;
  return unit === null ? firstExample : inUnit(firstExample, unit);
}

function addressOf(fragment: string): string {
  return `${location.pathname}${location.search}${fragment === '' ? '' : `#${fragment}`}`;
}

function write(fragment: string, way: 'push' | 'replace'): void {
  if (way === 'push') history.pushState(history.state, '', addressOf(fragment));
  else history.replaceState(history.state, '', addressOf(fragment));
}
