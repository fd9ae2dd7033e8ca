import { useEffect, useState } from 'preact/hooks';

/**
 * Keeps the screen on while something is followed, and asks again when the page is back in sight.
 *
 * @returns whether that was refused.
 */
export function useAwake(isWanted: boolean): boolean {
  const [isRefused, setRefused] = useState(false);
  useEffect(() => {
    if (!isWanted) return;
    let lock: WakeLockSentinel | null = null;
    let isGone = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      try {
        const given = await navigator.wakeLock.request('screen');
        setRefused(false);
        if (isGone) await given.release();
        else lock = given;
      } catch {
        // No such thing in this browser, or a battery that is nearly empty.
        setRefused(true);
      }
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      isGone = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, [isWanted]);
  return isWanted && isRefused;
}
