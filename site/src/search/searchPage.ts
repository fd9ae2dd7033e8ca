import { liveSearch } from './liveSearch.tsx';
import { moveAmong } from './moveAmong.ts';
import { slashKeyIsOn, turnSlashKey } from './slashKey.ts';

const area = document.getElementById('search');
const input = area?.querySelector('input');
const place = document.getElementById('search-found');

if (area && input && place) {
  input.value ||= new URLSearchParams(location.search).get('q') ?? '';
  liveSearch({ input, place, base: area.dataset.base ?? '/', most: 6, onQuery: keepInAddress });
  moveAmong(input, place, area);
  input.form?.addEventListener('submit', (event) => event.preventDefault());
  if (input.value === '') input.focus();
}

function keepInAddress(query: string): void {
  const search = query === '' ? '' : `?${new URLSearchParams({ q: query })}`;
  if (search !== location.search)
    history.replaceState(history.state, '', `${location.pathname}${search}`);
}

const keyPart = document.getElementById('search-key');
const key = keyPart?.querySelector('input');

if (keyPart && key) {
  key.checked = slashKeyIsOn();
  key.addEventListener('change', () => turnSlashKey(key.checked));
  keyPart.hidden = false;
}
