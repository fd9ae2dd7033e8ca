import { useCallback, useEffect, useState } from 'preact/hooks';

/** How sets are counted, kept in the browser. */
export interface CountSettings {
  readonly counted: boolean;
  readonly sound: boolean;
  readonly voice: boolean;
  readonly vibration: boolean;
  readonly leadInSeconds: number;
}

const KEY = 'windlass.count';

export const leadIns: readonly number[] = [3, 5, 10];

const usual: CountSettings = {
  counted: true,
  sound: true,
  voice: false,
  vibration: true,
  leadInSeconds: 5,
};

/** The settings, and how to change some of them. A browser that keeps nothing forgets them. */
export function useCountSettings(): readonly [
  CountSettings,
  (change: Partial<CountSettings>) => void,
] {
  const [settings, setSettings] = useState(usual);
  useEffect(() => setSettings(keptSettings()), []);
  const set = useCallback((change: Partial<CountSettings>) => {
    setSettings((before) => {
      const next = { ...before, ...change };
      keep(next);
      return next;
    });
  }, []);
  return [settings, set];
}

function keptSettings(): CountSettings {
  try {
    return readSettings(JSON.parse(localStorage.getItem(KEY) ?? 'null'));
  } catch {
    return usual;
  }
}

/** What can be read of settings that were kept; the usual ones for the rest. */
export function readSettings(kept: unknown): CountSettings {
  if (typeof kept !== 'object' || kept === null) return usual;
  const fields: Readonly<Record<string, unknown>> = { ...kept };
  const isOn = (name: 'counted' | 'sound' | 'voice' | 'vibration') => {
    const value = fields[name];
    return typeof value === 'boolean' ? value : usual[name];
  };
  return {
    counted: isOn('counted'),
    sound: isOn('sound'),
    voice: isOn('voice'),
    vibration: isOn('vibration'),
    leadInSeconds: leadIns.find((one) => one === fields.leadInSeconds) ?? usual.leadInSeconds,
  };
}

function keep(settings: CountSettings): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(settings));
  } catch {
    // Private windows and full disks refuse; the choice then lasts as long as the page.
  }
}
