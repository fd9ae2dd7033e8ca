import { liveSearch } from './liveSearch.tsx';
import { moveAmong } from './moveAmong.ts';

/** Shows what is found below the search field of the head while the focus is there. */
export function openPanel(form: HTMLFormElement, input: HTMLInputElement): void {
  const place = form.querySelector<HTMLElement>('.head-found');
  if (!place) return;
  liveSearch({ input, place, base: form.dataset.base ?? '/', most: 3, isPanel: true });
  moveAmong(input, place, form);

  const toggle = (isOpen: boolean) => {
    place.hidden = !isOpen || input.value.trim() === '';
  };
  toggle(true);
  input.addEventListener('input', () => toggle(true));
  input.addEventListener('focus', () => toggle(true));
  form.addEventListener('focusout', ({ relatedTarget }) => {
    if (!(relatedTarget instanceof Node && form.contains(relatedTarget))) toggle(false);
  });
  form.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || place.hidden) return;
    event.preventDefault();
    input.focus();
    toggle(false);
  });
}
