// @vitest-environment happy-dom

import { hydrate, render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { barLoading } from '../bar-loading/definition.ts';
import { renderCalculator } from '../renderCalculator.tsx';
import { tempoSeconds } from '../tempo-seconds/definition.ts';
import { CalculatorApp } from './CalculatorApp.tsx';

let place: HTMLElement;

beforeEach(() => {
  place = document.createElement('div');
  document.body.append(place);
});

afterEach(() => {
  render(null, place);
  place.remove();
});

function type(id: string, text: string): void {
  const input = place.querySelector<HTMLInputElement>(`#${id}`);
  if (!input) throw new Error(`no #${id}`);
  input.value = text;
  act(() => {
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  });
}

function press(name: string): void {
  const button = place.querySelector<HTMLButtonElement>(`button[aria-label="${name}"]`);
  if (!button) throw new Error(`no button ${name}`);
  act(() => button.click());
}

const text = (selector: string) => place.querySelector(selector)?.textContent;
const typedIn = (id: string) => place.querySelector<HTMLInputElement>(`#${id}`)?.value;

describe('CalculatorApp', () => {
  it('answers a change at once and tells the query', () => {
    const told: string[] = [];
    act(() =>
      render(
        <CalculatorApp calculator={barLoading} onStateChange={(query) => told.push(query)} />,
        place,
      ),
    );
    type('bar-loading-target', '100');
    expect(text('.wl-value')).toBe('100');
    expect(told).toEqual(['target=100kg']);
  });

  it('keeps a wrong value as typed, says what would be right, and marks the last result as old', () => {
    act(() => render(<CalculatorApp calculator={barLoading} />, place));
    type('bar-loading-target', '1oo');
    expect(typedIn('bar-loading-target')).toBe('1oo');
    expect(place.querySelector('#bar-loading-target')?.getAttribute('aria-invalid')).toBe('true');
    expect(text('#bar-loading-target-help')).toMatch(/kg or lb/);
    expect(place.querySelector('.wl-head')?.hasAttribute('data-old')).toBe(true);
    expect(text('.wl-value')).toBe('82.5');
    type('bar-loading-target', '62,5');
    expect(place.querySelector('.wl-head')?.hasAttribute('data-old')).toBe(false);
    expect(text('.wl-value')).toBe('62.5');
  });

  it('takes a unit that is typed after the number', () => {
    act(() => render(<CalculatorApp calculator={barLoading} />, place));
    type('bar-loading-target', '135 lb');
    expect(typedIn('bar-loading-target')).toBe('135');
    const unit = place.querySelector<HTMLSelectElement>('select[aria-label="Load wanted: unit"]');
    expect(unit?.value).toBe('lb');
  });

  it('steps a load by what the smallest pair of plates adds', () => {
    act(() => render(<CalculatorApp calculator={barLoading} />, place));
    press('Load wanted: one step more');
    expect(typedIn('bar-loading-target')).toBe('85');
    act(() =>
      render(<CalculatorApp key="2" calculator={barLoading} query="plates=5kg_2" />, place),
    );
    press('Load wanted: one step more');
    expect(typedIn('bar-loading-target')).toBe('90');
  });

  it('adds and removes rows', () => {
    act(() => render(<CalculatorApp calculator={barLoading} query="plates=20kg_2" />, place));
    press('Plate 1: pieces: one step more');
    expect(typedIn('bar-loading-plates-0-pieces')).toBe('3');
    const add = [...place.querySelectorAll('button')].find(
      (one) => one.textContent === 'Add a plate',
    );
    act(() => add?.click());
    expect(typedIn('bar-loading-plates-1-weight')).toBe('20');
    press('Remove plate 1');
    expect(place.querySelectorAll('.wl-row')).toHaveLength(1);
  });

  it('opens a folded group that holds a wrong value', () => {
    act(() => render(<CalculatorApp calculator={barLoading} query="collar=heavy" />, place));
    expect(place.querySelector('details')?.open).toBe(true);
  });

  it('names what an address carries and it does not know', () => {
    act(() => render(<CalculatorApp calculator={barLoading} query="target=100kg&mood=9" />, place));
    expect(text('.wl-notice')).toContain('mood');
  });

  it('reads a tempo in the order that is chosen', () => {
    act(() => render(<CalculatorApp calculator={tempoSeconds} query="tempo=X-0-4-0" />, place));
    expect(text('#tempo-seconds-tempo-help')).not.toMatch(/^Four numbers/);
    const lift = place.querySelector<HTMLInputElement>('input[value="lift-first"]');
    act(() => lift?.click());
    expect(text('#tempo-seconds-tempo-help')).toMatch(/^Four numbers/);
    expect(text('.wl-value')).toBe('40');
  });

  it('hydrates its own markup without changing it', () => {
    place.innerHTML = renderCalculator(barLoading);
    const before = place.innerHTML;
    const head = place.querySelector('.wl-head');
    act(() => hydrate(<CalculatorApp calculator={barLoading} />, place));
    expect(place.querySelector('.wl-head')).toBe(head);
    expect(place.innerHTML).toBe(before);
  });

  it('takes up the live query after the first render', () => {
    place.innerHTML = renderCalculator(barLoading);
    act(() => hydrate(<CalculatorApp calculator={barLoading} liveQuery={LIVE} />, place));
    expect(text('.wl-value')).toBe('100');
  });
});

const LIVE = () => 'target=100kg';
