/** The name under which the tools keep the same choice. */
const KEY = 'windlass.unit';

/** The unit that was asked for last in this browser; nothing where none was, or none is kept. */
export function rememberedUnit(): 'kg' | 'lb' | null {
  try {
    const unit = localStorage.getItem(KEY);
    return unit === 'kg' || unit === 'lb' ? unit : null;
  } catch {
    return null;
  }
}

/** Keeps the unit for the next visit. A browser that keeps nothing is left alone. */
export function rememberUnit(unit: string): void {
  try {
    localStorage.setItem(KEY, unit);
  } catch {
    // Private windows and full disks refuse; the choice then lasts as long as the page.
  }
}
