/** Lets the arrow keys go from a search field through the places found below it and back. */
export function moveAmong(input: HTMLInputElement, place: HTMLElement, area: HTMLElement): void {
  area.addEventListener('keydown', (event) => {
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    if (step === 0 || event.ctrlKey || event.metaKey || event.altKey) return;
    const stops: Element[] = [input, ...place.querySelectorAll('a[href]')];
    const at = document.activeElement ? stops.indexOf(document.activeElement) : -1;
    const next = stops[at + step];
    if (at < 0 || !(next instanceof HTMLElement)) return;
    event.preventDefault();
    next.focus();
  });
}
