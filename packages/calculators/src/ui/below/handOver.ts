const USABLE = 'a[href], button, input, select, textarea, summary';

/** A part of a page as it was served, and what was pressed in it before it was drawn anew. */
export interface ServedPart {
  readonly part: Element;
  readonly pressed: Element | null;
}

/** Opens, focuses and presses in a part that is drawn anew what was so in the served one, by place. */
export function handOver({ part, pressed }: ServedPart, to: ParentNode): void {
  const details = [...part.querySelectorAll('details')];
  to.querySelectorAll('details').forEach((now, place) => {
    now.open = details[place]?.open ?? now.open;
  });
  const place = [...part.querySelectorAll(USABLE)].indexOf(pressed ?? part);
  const again = [...to.querySelectorAll<HTMLElement>(USABLE)][place];
  again?.focus();
  again?.click();
}
