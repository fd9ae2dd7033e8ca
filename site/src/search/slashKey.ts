const KEY = 'windlass.slash-key';

/** Whether the key / goes to the search field on this device. It does unless it was turned off. */
export function slashKeyIsOn(): boolean {
  try {
    return localStorage.getItem(KEY) !== 'off';
  } catch {
    return true;
  }
}

/** Turns the key on or off for this device. A browser that keeps nothing keeps it on. */
export function turnSlashKey(isOn: boolean): void {
  try {
    localStorage.setItem(KEY, isOn ? 'on' : 'off');
  } catch {
    // Private windows refuse; then it stays as it is.
  }
}

/** Calls `go` at the key /, unless somebody is writing, a dialog is open, or it was turned off. */
export function onSlashKey(go: () => void): void {
  document.addEventListener('keydown', (event) => {
    if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.defaultPrevented || isWriting(event) || document.querySelector('dialog[open]'))
      return;
    if (!slashKeyIsOn()) return;
    event.preventDefault();
    go();
  });
}

/** Also inside an enclosed calculator, whose fields only the path of the event names. */
function isWriting(event: KeyboardEvent): boolean {
  const [target] = event.composedPath();
  return (
    target instanceof Element &&
    target.closest('input, textarea, select, [contenteditable]') !== null
  );
}
