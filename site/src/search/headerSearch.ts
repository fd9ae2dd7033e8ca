import { onSlashKey } from './slashKey.ts';

/*
 * Runs on every page, so it is small: the key that leads to the search field, and fetching the rest
 * when somebody goes there.
 */
const form = document.querySelector<HTMLFormElement>('#head-search');
const input = form?.querySelector('input');

if (form && input) {
  const open = () => void import('./headerPanel.ts').then((panel) => panel.openPanel(form, input));
  if (document.activeElement === input) open();
  else input.addEventListener('focus', open, { once: true });
}

onSlashKey(() => {
  const fields = document.querySelectorAll<HTMLInputElement>('input[type="search"][name="q"]');
  const shown = [...fields].filter((field) => field.checkVisibility()).at(-1);
  if (shown) shown.focus();
  else document.querySelector<HTMLAnchorElement>('#head-search-link')?.click();
});
