import { useCallback, useEffect, useRef, useState } from 'preact/hooks';

/**
 * The page's audio. Browsers let it sound only after a touch or a key; each one wakes it.
 *
 * @returns the context once it sounds, and whether it is kept from sounding now.
 */
export function useAudio(isWanted: boolean): {
  readonly audio: AudioContext | null;
  readonly isBlocked: boolean;
  readonly wake: () => AudioContext | null;
} {
  const context = useRef<AudioContext | null>(null);
  const [isRunning, setRunning] = useState(false);
  const wake = useCallback(() => {
    if (!('AudioContext' in globalThis)) return null;
    if (!context.current) {
      const made = new AudioContext({ latencyHint: 'interactive' });
      made.addEventListener('statechange', () => setRunning(made.state === 'running'));
      context.current = made;
      setRunning(made.state === 'running');
    }
    if (context.current.state !== 'running') void context.current.resume();
    return context.current;
  }, []);
  useEffect(() => {
    if (!isWanted) return;
    addEventListener('pointerdown', wake);
    addEventListener('keydown', wake);
    return () => {
      removeEventListener('pointerdown', wake);
      removeEventListener('keydown', wake);
    };
  }, [isWanted]);
  return { audio: isRunning ? context.current : null, isBlocked: isWanted && !isRunning, wake };
}
