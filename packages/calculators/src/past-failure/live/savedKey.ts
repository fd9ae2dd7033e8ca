/** The name under which a tab keeps the set that is being followed. */
export const SAVED_KEY = 'windlass.live-set';

/** Whether this tab keeps a set; no where storage is blocked. */
export function hasSavedSet(): boolean {
  try {
    return sessionStorage.getItem(SAVED_KEY) !== null;
  } catch {
    return false;
  }
}
