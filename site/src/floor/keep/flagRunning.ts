/** Under this name the browser keeps that a session is going on, to be read before the page shows. */
const KEY = 'windlass.floor';

/** Tells the next opening of the page that a session is going on, or is no more. */
export function flagRunning(isRunning: boolean): void {
  try {
    if (isRunning) localStorage.setItem(KEY, '1');
    else localStorage.removeItem(KEY);
  } catch {
    // Private windows refuse; the page then shows the demonstration for a moment.
  }
}
