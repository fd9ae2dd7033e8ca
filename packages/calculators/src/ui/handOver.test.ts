// @vitest-environment happy-dom
import { beforeEach, expect, it, vi } from 'vitest';
import { handOver } from './handOver.ts';

const markup =
  '<a href="#a">a</a><button>b</button><details><summary>c</summary></details><details></details>';
let before: HTMLElement;
let after: HTMLElement;

beforeEach(() => {
  document.body.innerHTML = `<div>${markup}</div><div>${markup}</div>`;
  [before, after] = document.querySelectorAll('div') as unknown as [HTMLElement, HTMLElement];
});

it('keeps which parts are open, and where the focus is', () => {
  const [first] = before.querySelectorAll('details');
  if (first) first.open = true;
  before.querySelector('summary')?.focus();
  handOver(before, null)(after);
  expect([...after.querySelectorAll('details')].map(({ open }) => open)).toEqual([true, false]);
  expect(document.activeElement).toBe(after.querySelector('summary'));
});

it('presses the button that was pressed, and follows no link again', () => {
  const heard = vi.fn();
  after.addEventListener('click', ({ target }) => heard((target as Element).textContent));
  handOver(before, before.querySelector('button'))(after);
  handOver(before, before.querySelector('a'))(after);
  expect(heard.mock.calls).toEqual([['b']]);
});

it('leaves the focus alone where it is elsewhere', () => {
  after.querySelector('button')?.focus();
  handOver(before, null)(after);
  expect(document.activeElement).toBe(after.querySelector('button'));
});
