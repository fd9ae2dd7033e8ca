// @vitest-environment happy-dom
import { hydrate, render } from 'preact';
import { act } from 'preact/test-utils';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Calculator } from '../contract/Calculator.ts';
import { findCalculator } from '../findCalculator.ts';
import { renderCalculator } from '../renderCalculator.tsx';
import { CalculatorApp } from './CalculatorApp.tsx';

const whole = findCalculator('tempo-seconds') as Calculator;
let place: HTMLElement;

beforeEach(() => {
  place = document.createElement('div');
  document.body.replaceChildren(place);
});

/** The calculator, with more to fetch; `come` and `fail` end the fetching. */
function withRest() {
  let come = () => {};
  let fail = (_: Error) => {};
  const calculator: Calculator = {
    ...whole,
    fetchRest: () =>
      new Promise<void>((resolve, reject) => {
        come = resolve;
        fail = reject;
      }),
  };
  return { calculator, come: () => come(), fail: () => fail(new Error('no network')) };
}

const more = () => place.querySelector('.wl-more');

async function type(text: string): Promise<void> {
  const input = place.querySelector<HTMLInputElement>('#tempo-seconds-reps');
  if (!input) throw new Error('no input');
  input.value = text;
  await act(() => {
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  });
}

describe('what stands below an answer', () => {
  it('is there at once where nothing has to be fetched', async () => {
    await act(() => render(<CalculatorApp calculator={whole} />, place));
    expect(more()?.textContent).toContain('Why');
  });

  it('comes after the answer, which does not wait for it', async () => {
    const { calculator, come } = withRest();
    await act(() => render(<CalculatorApp calculator={calculator} />, place));
    expect(place.querySelector('.wl-value')?.textContent).toBe('56');
    expect(more()?.textContent).toBe('');
    come();
    await vi.waitFor(() => expect(more()?.textContent).toContain('Why'));
  });

  it('stays as it was served until it has come, or until the answer is another', async () => {
    const { calculator, come } = withRest();
    place.innerHTML = renderCalculator(whole);
    const app = <CalculatorApp calculator={calculator} liveQuery={() => ''} />;
    await act(() => hydrate(app, place));
    expect(more()?.textContent).toContain('Why');
    await type('10');
    expect(place.querySelector('.wl-value')?.textContent).toBe('70');
    expect(more()?.textContent).toBe('');
    come();
    await vi.waitFor(() => expect(more()?.textContent).toContain('Why'));
  });

  it('says when it could not be fetched, and comes with the next change', async () => {
    const { calculator, come, fail } = withRest();
    await act(() => render(<CalculatorApp calculator={calculator} />, place));
    fail();
    const alert = () => place.querySelector('[role="alert"]');
    await vi.waitFor(() => expect(alert()?.textContent).toMatch(/could not be fetched/));
    await type('10');
    come();
    await vi.waitFor(() => expect(more()?.textContent).toContain('Why'));
    expect(alert()).toBeNull();
  });
});
