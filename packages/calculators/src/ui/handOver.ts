const USABLE = 'a[href], button, input, select, textarea, summary';

/** What somebody has done in a part of a page: applied to the same part, drawn anew. */
export type HandOver = (to: ParentNode) => void;

/** Keeps where the focus is, what is open and what was pressed, by its place among its like. */
export function handOver(from: ParentNode, pressed: Element | null): HandOver {
  const usable = [...from.querySelectorAll(USABLE)];
  const focused = usable.indexOf(document.activeElement ?? document.body);
  const isOpen = [...from.querySelectorAll('details')].map(({ open }) => open);
  const press = usable.indexOf(pressed?.closest(USABLE) ?? document.body);
  return (to) => {
    const now = [...to.querySelectorAll<HTMLElement>(USABLE)];
    to.querySelectorAll('details').forEach((details, at) => {
      details.open = isOpen[at] ?? details.open;
    });
    if (focused >= 0) now[focused]?.focus();
    if (press >= 0 && now[press] instanceof HTMLButtonElement) now[press].click();
  };
}
