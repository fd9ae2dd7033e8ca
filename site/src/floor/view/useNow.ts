import { useEffect, useState } from 'preact/hooks';
import { wallNow } from '../count/wallClock.ts';

/**
 * The moment, again and again while something is to be followed: with every frame, or as often as
 * it is asked for; after the page was hidden at once.
 */
export function useNow(follows: 'frames' | 'seconds' | 'nothing'): number {
  const [now, setNow] = useState(wallNow);
  useEffect(() => {
    if (follows === 'nothing') return;
    let frame = 0;
    let timer = 0;
    const show = () => setNow(wallNow());
    const step = () => {
      show();
      frame = requestAnimationFrame(step);
    };
    if (follows === 'frames') step();
    else {
      show();
      timer = window.setInterval(show, 200);
    }
    document.addEventListener('visibilitychange', show);
    return () => {
      cancelAnimationFrame(frame);
      clearInterval(timer);
      document.removeEventListener('visibilitychange', show);
    };
  }, [follows]);
  return now;
}
