import { useEffect, useRef, useState } from 'preact/hooks';
import type { Planned } from './state/planFrom.ts';
import { words } from './words.ts';

const QUIET_MILLISECONDS = 900;

/** For those who hear the page: what the session has become, once changing it has paused. */
export function LiveLine({ shown }: { readonly shown: Planned }) {
  const [said, setSaid] = useState('');
  const first = useRef(shown);
  useEffect(() => {
    if (shown === first.current) return;
    const timer = setTimeout(() => setSaid(sentenceOf(shown)), QUIET_MILLISECONDS);
    return () => clearTimeout(timer);
  }, [shown]);
  return (
    <p class="visually-hidden" role="status">
      {said}
    </p>
  );
}

function sentenceOf({ sheet }: Planned): string {
  if (sheet.kind === 'ask-first') return words.head.liveAsk;
  if (sheet.kind === 'too-short') return sheet.message;
  const lifts = sheet.lifts.map((lift) => {
    if (lift.kind === 'left-out') return `${lift.name}: ${words.lift.leftOut}`;
    return `${lift.name}: ${lift.kind === 'planned' ? lift.load.words : lift.firstLoad.words}`;
  });
  return words.head.live(Math.round(sheet.minutes.total), lifts);
}
