import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type HandOver, handOver } from './handOver.ts';

/** What of the markup that a page was served with still stands. */
export interface Served {
  /** The number and its picture stand as they were served. */
  readonly isAnswerKept: boolean;
  /** What stands below them does. */
  readonly isMoreKept: boolean;
  /** On the element whose last part is what stands below the answer. */
  readonly sheet: { readonly current: HTMLDivElement | null };
}

/**
 * A page arrives with its first answer. It is worked out again only when something else is asked,
 * or what stands below it is used, so that the form can be used at once. Focus, opened parts and
 * a press there carry over.
 */
export function useServed(isServed: boolean, isChanged: boolean, isRestThere: boolean): Served {
  const sheet = useRef<HTMLDivElement>(null);
  const pressed = useRef<Element | null>(null);
  const carry = useRef<HandOver | null>(null);
  const [isUsed, setUsed] = useState(!isServed);
  const [isMoreKept, setMoreKept] = useState(isServed);
  const isWanted = isUsed || isChanged;
  const more = () => sheet.current?.lastElementChild ?? null;

  useEffect(() => {
    const part = more();
    if (!isMoreKept || part === null) return;
    const use = (event: Event) => {
      if (!isUse(event)) return;
      if (event.type === 'click') pressed.current = event.target as Element;
      // After what the browser does itself at a click: opening a part.
      setTimeout(() => setUsed(true));
    };
    const signs = ['pointerover', 'focusin', 'click'] as const;
    for (const sign of signs) part.addEventListener(sign, use);
    return () => {
      for (const sign of signs) part.removeEventListener(sign, use);
    };
  }, [isMoreKept]);

  useLayoutEffect(() => {
    const part = more();
    if (isMoreKept && isWanted && isRestThere && part) {
      carry.current = handOver(part, pressed.current);
      setMoreKept(false);
    }
  }, [isMoreKept, isWanted, isRestThere]);

  useLayoutEffect(() => {
    const part = more();
    if (!isMoreKept && part) carry.current?.(part);
    carry.current = null;
  }, [isMoreKept]);

  return { isAnswerKept: !isWanted, isMoreKept, sheet };
}

/** A finger that comes down and the focus that it brings are followed by a click, which is the use. */
function isUse(event: Event): boolean {
  if (event.type === 'focusin') return (event.target as Element).matches(':focus-visible');
  return event.type === 'click' || (event as PointerEvent).pointerType === 'mouse';
}
