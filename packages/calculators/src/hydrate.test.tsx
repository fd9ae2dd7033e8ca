// @vitest-environment happy-dom
import { act } from 'preact/test-utils';
import { beforeEach, describe, expect, it } from 'vitest';
import { barLoading } from './bar-loading/definition.ts';
import { hydrateCalculators } from './hydrate.tsx';
import { renderCalculator } from './renderCalculator.tsx';

beforeEach(() => {
  document.body.innerHTML = `<div data-calculator="bar-loading" data-tools="/tools/">${renderCalculator(barLoading, { tools: '/tools/' })}</div>`;
  history.replaceState(null, '', '/tools/bar-loading/?target=100kg');
  localStorage.clear();
});

async function type(text: string): Promise<void> {
  const input = document.querySelector<HTMLInputElement>('#bar-loading-target');
  if (!input) throw new Error('no input');
  input.value = text;
  await act(() => {
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  });
}

describe('hydrateCalculators', () => {
  it('takes the state from the address and keeps it there', async () => {
    await act(() => hydrateCalculators());
    expect(document.querySelector('.wl-value')?.textContent).toBe('100');
    await type('60');
    expect(document.querySelector('.wl-value')?.textContent).toBe('60');
    expect(location.search).toBe('?target=60kg');
    await type('82.5');
    expect(location.search).toBe('');
  });

  it('links to the calculators beside it', async () => {
    await act(() => hydrateCalculators());
    for (const link of document.querySelectorAll('.wl-links a')) {
      expect(link.getAttribute('href')).toMatch(/^\/tools\/[a-z-]+\/(\?|$)/);
    }
  });

  it('leaves the address alone where several share a page', async () => {
    document.body.innerHTML += '<div data-calculator="tempo-seconds"></div>';
    await act(() => hydrateCalculators());
    expect(document.querySelector('.wl-value')?.textContent).toBe('82.5');
    await type('60');
    expect(location.search).toBe('?target=100kg');
  });

  it('passes over what it does not know', async () => {
    document.body.innerHTML = '<div data-calculator="no-such-thing">still here</div>';
    await hydrateCalculators();
    expect(document.body.textContent).toBe('still here');
  });
});
