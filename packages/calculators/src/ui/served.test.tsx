// @vitest-environment happy-dom
import { hydrate } from 'preact';
import { act } from 'preact/test-utils';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Calculator } from '../contract/Calculator.ts';
import { findCalculator } from '../findCalculator.ts';
import { renderCalculator } from '../renderCalculator.tsx';
import { CalculatorApp } from './CalculatorApp.tsx';

const whole = findCalculator('tempo-seconds') as Calculator;
const answer = vi.fn(whole.answer);
const calculator: Calculator = { ...whole, answer };
let place: HTMLElement;

beforeEach(async () => {
  answer.mockClear();
  place = document.createElement('div');
  document.body.replaceChildren(place);
  place.innerHTML = renderCalculator(whole);
});

/** Hydrates what was served, with this query in the address. */
const start = (query = '') =>
  act(() =>
    hydrate(<CalculatorApp calculator={calculator} liveQuery={() => query} isServed />, place),
  );

function find<E extends Element>(selector: string): E {
  const found = place.querySelector<E>(selector);
  if (!found) throw new Error(`no ${selector}`);
  return found;
}

async function type(text: string): Promise<void> {
  const input = find<HTMLInputElement>('#tempo-seconds-reps');
  input.value = text;
  await act(() => {
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  });
}

const value = () => find('.wl-value').textContent;

describe('the answer that a page was served with', () => {
  it('stands without being worked out again', async () => {
    const before = place.innerHTML;
    await start();
    expect(answer).not.toHaveBeenCalled();
    expect(place.innerHTML).toBe(before);
  });

  it('gives way to another one, in the element that is read aloud', async () => {
    await start();
    const head = find('.wl-head');
    await type('10');
    expect(value()).toBe('70');
    expect(find('.wl-head')).toBe(head);
    expect(head.querySelectorAll('.wl-head-label')).toHaveLength(1);
    expect(place.querySelectorAll('.wl-more')).toHaveLength(1);
    await type('8');
    expect(value()).toBe('56');
  });

  it('gives way at once where the address asks something else', async () => {
    await start('reps=10');
    expect(value()).toBe('70');
  });

  it('stands above what is used below it, where a press carries over', async () => {
    const print = vi.fn();
    Object.assign(window, { print });
    await start();
    const number = find('.wl-value');
    const button = [...place.querySelectorAll<HTMLButtonElement>('.wl-more button')].find(
      ({ textContent }) => textContent === 'Print',
    );
    if (!button) throw new Error('no button');
    await act(() => {
      button.focus();
      button.click();
    });
    await vi.waitFor(() => expect(print).toHaveBeenCalledOnce());
    expect(document.activeElement?.textContent).toBe('Print');
    expect(document.activeElement).not.toBe(button);
    expect(find('.wl-value')).toBe(number);
  });
});
