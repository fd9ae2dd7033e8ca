// @vitest-environment happy-dom
import { beforeAll, describe, expect, it, vi } from 'vitest';

beforeAll(async () => {
  await import('./element.tsx');
});

function put(attributes: Readonly<Record<string, string>>): HTMLElement {
  const element = document.createElement('windlass-calculator');
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  document.body.replaceChildren(element);
  return element;
}

const shownIn = (element: HTMLElement) =>
  element.shadowRoot?.querySelector('.wl-value')?.textContent;

describe('<windlass-calculator>', () => {
  it('shows a calculator with the state it is given, styles enclosed', async () => {
    const element = put({ calculator: 'bar-loading', query: 'target=100kg' });
    await vi.waitFor(() => expect(shownIn(element)).toBe('100'));
    expect(element.shadowRoot?.adoptedStyleSheets).toHaveLength(1);
  });

  it('tells every change', async () => {
    const element = put({ calculator: 'bar-loading' });
    await vi.waitFor(() => expect(shownIn(element)).toBe('82.5'));
    const told: string[] = [];
    element.addEventListener('windlass-change', (event) => {
      if (event instanceof CustomEvent) told.push(event.detail.query);
    });
    const input = element.shadowRoot?.querySelector<HTMLInputElement>('#bar-loading-target');
    if (!input) throw new Error('no input');
    input.value = '60';
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    expect(told).toEqual(['target=60kg']);
    await vi.waitFor(() => expect(shownIn(element)).toBe('60'));
  });

  it('follows its attributes', async () => {
    const element = put({ calculator: 'bar-loading' });
    await vi.waitFor(() => expect(shownIn(element)).toBe('82.5'));
    element.setAttribute('query', 'target=70kg');
    await vi.waitFor(() => expect(shownIn(element)).toBe('70'));
  });

  it('links out only where it is told the folder of the tools', async () => {
    const element = put({ calculator: 'load-for-window' });
    await vi.waitFor(() => expect(shownIn(element)).toBeDefined());
    expect(element.shadowRoot?.querySelector('.wl-links')).toBeNull();
    element.setAttribute('tools', 'https://example.org/tools/');
    await vi.waitFor(() => expect(element.shadowRoot?.querySelector('.wl-links')).not.toBeNull());
  });
});
