import { useEffect } from 'preact/hooks';

/** Keeps the screen on while a set is followed, where the browser can. */
export function useAwakeScreen(): void {
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let isGone = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      try {
        const given = await navigator.wakeLock.request('screen');
        if (isGone) await given.release();
        else lock = given;
      } catch {
        // A battery that is nearly empty refuses; the set goes on without.
      }
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      isGone = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, []);
}
