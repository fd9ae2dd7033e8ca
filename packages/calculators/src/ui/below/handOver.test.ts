// @vitest-environment happy-dom
import { beforeEach, expect, it, vi } from 'vitest';
import { handOver } from './handOver.ts';

const markup =
  '<a href="#a">a</a><button>b</button><details><summary>c</summary></details><details></details>';
let part: HTMLElement;
let after: HTMLElement;

beforeEach(() => {
  document.body.innerHTML = `<div>${markup}</div><div>${markup}</div>`;
  [part, after] = document.querySelectorAll('div') as unknown as [HTMLElement, HTMLElement];
});

it('keeps which parts are open', () => {
  const [first] = part.querySelectorAll('details');
  if (first) first.open = true;
  handOver({ part, pressed: null }, after);
  expect([...after.querySelectorAll('details')].map(({ open }) => open)).toEqual([true, false]);
});

it('presses what was pressed, and leaves the focus there', () => {
  const heard = vi.fn();
  after.addEventListener('click', ({ target }) => heard((target as Element).textContent));
  handOver({ part, pressed: part.querySelector('button') }, after);
  expect(heard.mock.calls).toEqual([['b']]);
  expect(document.activeElement).toBe(after.querySelector('button'));
});

it('leaves the focus alone where nothing was pressed', () => {
  part.querySelector('a')?.focus();
  handOver({ part, pressed: null }, after);
  expect(document.activeElement).toBe(part.querySelector('a'));
});
