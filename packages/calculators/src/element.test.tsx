// @vitest-environment happy-dom
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { CalculatorResult } from './contract/CalculatorResult.ts';
import type { AttributeProblem } from './element/AttributeProblem.ts';

beforeAll(async () => {
  await import('./element.tsx');
});

function put(attributes: Readonly<Record<string, string>>): HTMLElement {
  const element = document.createElement('windlass-calculator');
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  document.body.replaceChildren(element);
  return element;
}

function type(element: HTMLElement, field: string, text: string): void {
  const input = element.shadowRoot?.querySelector<HTMLInputElement>(field);
  if (!input) throw new Error(`no input ${field}`);
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true }));
}

/** Chunks and renders take their time on a busy machine. */
const soon = (check: () => void) => vi.waitFor(check, { timeout: 20_000 });

const shownIn = (element: HTMLElement) =>
  element.shadowRoot?.querySelector('.wl-value')?.textContent;

describe('<windlass-calculator>', () => {
  it('shows a calculator with the state it is given, styles enclosed', async () => {
    const element = put({ calculator: 'bar-loading', query: 'target=100kg' });
    await soon(() => expect(shownIn(element)).toBe('100'));
    expect(element.shadowRoot?.adoptedStyleSheets).toHaveLength(1);
  });

  it('tells the first answer and every change, as plain data', async () => {
    const told: CalculatorResult[] = [];
    document.addEventListener('windlass-result', listen);
    const element = put({ calculator: 'load-for-window' });
    await soon(() => expect(told).toHaveLength(1));
    const [first] = told;
    expect(first).toMatchObject({ calculator: 'load-for-window', query: '', kind: 'result' });
    expect(first?.headline?.value).toBe(shownIn(element));
    expect(first?.band?.level).toBe(0.8);
    expect(JSON.parse(JSON.stringify(first))).toEqual(first);

    type(element, '#load-for-window-tempo', 'slow');
    await soon(() => expect(told.at(-1)?.kind).toBe('unreadable'));
    expect(told.at(-1)).toMatchObject({ headline: null, texts: { tempo: 'slow', window: '6-8' } });
    expect(told.at(-1)?.problems[0]?.field).toBe('tempo');
    document.removeEventListener('windlass-result', listen);

    function listen(event: Event): void {
      if (event instanceof CustomEvent) told.push(event.detail);
    }
  });

  it('takes any field as an attribute, the query before it', async () => {
    const element = put({ calculator: 'bar-loading', target: '100kg' });
    await soon(() => expect(shownIn(element)).toBe('100'));
    const other = put({ calculator: 'bar-loading', target: '100kg', query: 'target=60kg' });
    await soon(() => expect(shownIn(other)).toBe('60'));
  });

  it('keeps the default where an attribute cannot be taken, and says so', async () => {
    const warn = vi.spyOn(console, 'warn').mockImplementation(() => {});
    const told: AttributeProblem[] = [];
    const listen = (event: Event) => {
      if (event instanceof CustomEvent) told.push(event.detail);
    };
    document.addEventListener('windlass-problem', listen);
    const element = put({
      calculator: 'bar-loading',
      target: 'much',
      taget: '60kg',
      'data-x': '1',
    });
    await soon(() => expect(shownIn(element)).toBe('82.5'));
    expect(element.shadowRoot?.querySelector('[aria-invalid="true"]')).toBeNull();
    expect(told.map(({ attribute, value }) => [attribute, value])).toEqual([
      ['target', 'much'],
      ['taget', '60kg'],
    ]);
    expect(told[0]?.message).toMatch(
      /^The attribute target="much" cannot be taken\. .* 62\.5 kg or 135 lb\. The default/,
    );
    expect(told[1]).toMatchObject({ calculator: 'bar-loading', code: 'element.unknown-attribute' });
    expect(told[1]?.message).toContain('target, take, bar, bar-weight');
    expect(warn.mock.calls.map(([, text]) => text)).toEqual(told.map(({ message }) => message));
    element.setAttribute('target', '62.5kg');
    await soon(() => expect(shownIn(element)).toBe('62.5'));
    element.setAttribute('target', 'NaN');
    await soon(() => expect(shownIn(element)).toBe('82.5'));
    document.removeEventListener('windlass-problem', listen);
    warn.mockRestore();
  });

  it('answers in the units asked for, where it has any', async () => {
    const warn = vi.spyOn(console, 'warn');
    const element = put({ calculator: 'bar-loading', target: '45lb', bar: 'other', units: 'lb' });
    await soon(() => expect(shownIn(element)).toBe('45'));
    const other = put({ calculator: 'tempo-seconds', units: 'lb' });
    await soon(() => expect(shownIn(other)).toBe('56'));
    expect(warn).not.toHaveBeenCalled();
  });

  it('computes again when an attribute changes, and keeps what was entered elsewhere', async () => {
    const told: string[] = [];
    const element = put({ calculator: 'tempo-seconds', reps: '8' });
    element.addEventListener('windlass-result', ({ detail }) =>
      told.push(detail.headline?.value ?? ''),
    );
    await soon(() => expect(shownIn(element)).toBe('56'));
    type(element, '#tempo-seconds-tempo', '2-1-2-0');
    await soon(() => expect(shownIn(element)).toBe('40'));
    element.setAttribute('reps', '10');
    await soon(() => expect(shownIn(element)).toBe('50'));
    type(element, '#tempo-seconds-reps', '6');
    await soon(() => expect(shownIn(element)).toBe('30'));
    element.setAttribute('reps', '10');
    await soon(() => expect(shownIn(element)).toBe('50'));
    expect(told).toEqual(['56', '40', '50', '30', '50']);
    element.removeAttribute('reps');
    await soon(() => expect(shownIn(element)).toBe('40'));
  });

  it('follows its query and its calculator', async () => {
    const element = put({ calculator: 'bar-loading' });
    await soon(() => expect(shownIn(element)).toBe('82.5'));
    element.setAttribute('query', 'target=70kg');
    await soon(() => expect(shownIn(element)).toBe('70'));
    element.removeAttribute('query');
    element.setAttribute('calculator', 'tempo-seconds');
    await soon(() => expect(shownIn(element)).toBe('56'));
  });

  it('shares nothing with others of its kind', async () => {
    const one = put({ calculator: 'tempo-seconds' });
    const other = document.createElement('windlass-calculator');
    other.setAttribute('calculator', 'tempo-seconds');
    document.body.append(other);
    await soon(() => expect(shownIn(other)).toBe('56'));
    type(one, '#tempo-seconds-reps', '10');
    await soon(() => expect(shownIn(one)).toBe('70'));
    expect(shownIn(other)).toBe('56');
  });

  it('says when there is no calculator of that name', async () => {
    const warn = vi.spyOn(console, 'warn').mockImplementation(() => {});
    const element = put({ calculator: 'no-such-thing' });
    await soon(() =>
      expect(element.shadowRoot?.querySelector('[role="alert"]')?.textContent).toBe(
        'There is no calculator named no-such-thing.',
      ),
    );
    warn.mockRestore();
  });

  it('links out only where it is told the folder of the tools', async () => {
    const element = put({ calculator: 'load-for-window' });
    await soon(() => expect(shownIn(element)).toBeDefined());
    expect(element.shadowRoot?.querySelector('.wl-links')).toBeNull();
    element.setAttribute('tools', 'https://example.org/tools/');
    await soon(() => expect(element.shadowRoot?.querySelector('.wl-links')).not.toBeNull());
  });
});
