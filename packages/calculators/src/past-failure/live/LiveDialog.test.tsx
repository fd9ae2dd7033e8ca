// @vitest-environment happy-dom

import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readTexts } from '../../contract/readTexts.ts';
import { computeChain } from '../compute.ts';
import { pastFailure } from '../definition.ts';
import { fields } from '../fields.ts';
import { LiveDialog } from './LiveDialog.tsx';

let place: HTMLElement;

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['performance', 'setInterval', 'clearInterval', 'Date'] });
  vi.setSystemTime(new Date(2026, 2, 2, 18, 30));
  sessionStorage.clear();
  place = document.createElement('div');
  document.body.append(place);
});

afterEach(() => {
  act(() => render(null, place));
  place.remove();
  vi.useRealTimers();
});

/** The chin-up of the boathouse: to failure, a hold of at most 10 s, lowerings of 5 s. */
function result() {
  const read = readTexts(fields, pastFailure.defaults);
  if (read.kind === 'unreadable') throw new Error(JSON.stringify(read.problems));
  const computed = computeChain(read.input);
  if (computed.kind === 'none') throw new Error(computed.message);
  return computed.result;
}

function open(onClose = () => {}): void {
  act(() => render(<LiveDialog result={result()} tempo="4-0-2-0" onClose={onClose} />, place));
}

/** Closes the page as a reload does and opens it again. */
function reload(): void {
  act(() => render(null, place));
  open();
}

const wait = (seconds: number) =>
  act(() => {
    vi.advanceTimersByTime(seconds * 1000);
  });
const buttons = () => [...place.querySelectorAll('button')];
const names = () => buttons().map(({ textContent }) => textContent);
const text = (selector: string) =>
  place.querySelector(selector)?.textContent?.replace(/\s+/g, ' ').trim();

function tap(name: string): void {
  const button = buttons().find(({ textContent }) => textContent === name);
  if (!button) throw new Error(`no button ${name} among ${names().join(', ')}`);
  act(() => button.click());
}

/** Three reps of 6 s and a fourth that fails after 2 s. */
function liftToFailure(): void {
  tap('Start');
  for (let rep = 0; rep < 3; rep++) {
    wait(6);
    tap('Rep done');
  }
  wait(2);
  tap('Not finished');
}

function holdFor(seconds: number): void {
  tap('Hold begins');
  wait(seconds);
  tap('Hold is over');
}

function lowerFor(seconds: number): void {
  wait(4);
  tap('Lowering begins');
  wait(seconds);
  tap('At the bottom');
}

describe('a set followed live', () => {
  it('goes through lift, hold and lowerings by the clock, and ends with its record', () => {
    open();
    liftToFailure();
    holdFor(8);
    for (const seconds of [5, 5, 5, 5]) lowerFor(seconds);
    // 3 · 6 + 8 + 4 · 5 = 46 s; the 2 s of the failed attempt are not timed.
    expect(text('.wl-live-record')).toContain('46 s under load');
    expect(text('.wl-live-record')).toContain('Every stage is done.');
    expect(text('.wl-live-record')).toContain('3 full reps');
    expect(names()).toContain('Copy for the log (CSV)');
  });

  it('puts the planned move first, and lets a stage be left out but none be done out of order', () => {
    open();
    liftToFailure();
    expect(names().indexOf('Hold begins')).toBeLessThan(names().indexOf('Lowering begins'));
    lowerFor(5);
    expect(names()).not.toContain('Hold begins');
  });

  it('warns when lowerings get shorter, and ends with the first that is not controlled', () => {
    open();
    liftToFailure();
    for (const seconds of [5, 4.6, 4.2]) lowerFor(seconds);
    // The line through 5, 4.6, 4.2 gives 3.8 s, under the 4 s that are four fifths of 5 s.
    expect(text('[role="alert"]')).toMatch(/getting shorter.*3\.8 s.*under 4 s/);
    lowerFor(3.9);
    expect(text('.wl-live-record')).toMatch(/stop rule: A lowering much faster/);
    expect(names()).not.toContain('Lowering begins');
  });

  it('says when a hold is past its time, and then takes nothing but the end', () => {
    open();
    liftToFailure();
    tap('Hold begins');
    wait(15);
    expect(text('[role="alert"]')).toBe('');
    wait(0.2);
    expect(text('[role="alert"]')).toMatch(/past its time/);
    expect(names()).not.toContain('Hold is over');
    tap('The load is down');
    expect(text('.wl-live-record')).toContain('the hold was past its time');
  });

  it('ends with a sign at any moment, says what to do and whom to ask', () => {
    open();
    tap('Start');
    wait(3);
    tap('Stop for a sign');
    tap('Fainting, dizziness or light-headedness');
    const record = text('.wl-live-record') ?? '';
    expect(record).toMatch(/stop rule: Fainting/);
    expect(record).toMatch(/sit or lie.*Ask a physician/);
    expect(names()).toContain('Stop for a sign');
    expect(names()).not.toContain('Rep done');
  });

  it('asks for reps left only while the opening lift is on', () => {
    open();
    tap('Start');
    wait(6);
    tap('Rep done');
    tap('End the set');
    tap('2 reps were left');
    expect(text('.wl-live-record')).toContain('Ended by choice.');
  });

  it('takes back and brings back', () => {
    open();
    tap('Start');
    wait(6);
    tap('Rep done');
    tap('Take back');
    expect(text('.wl-live-figure')).toBe('0 reps');
    tap('Bring back');
    expect(text('.wl-live-figure')).toBe('1 rep');
  });

  it('goes on after a reload, with the time that has passed', () => {
    open();
    liftToFailure();
    tap('Hold begins');
    wait(4);
    reload();
    wait(3);
    expect(text('.wl-live-phase')).toBe('Holding');
    tap('Hold is over');
    tap('End the set');
    tap('Stopped, without a count');
    // 3 · 6 + 4 + 3 = 25 s.
    expect(text('.wl-live-record')).toContain('25 s under load');
  });

  it('begins afresh where what was kept is no set', () => {
    for (const kept of [
      '{',
      '{"origin":1}',
      '{"origin":1,"set":{"plan":{},"log":[],"undone":[]}}',
    ]) {
      sessionStorage.setItem('windlass.live-set', kept);
      open();
      expect(names()).toContain('Start');
      act(() => render(null, place));
    }
  });

  it('forgets a set that has ended once it is closed, and keeps one that is under way', () => {
    let closed = 0;
    open(() => {
      closed += 1;
    });
    tap('Start');
    tap('Close');
    expect(closed).toBe(1);
    expect(sessionStorage.getItem('windlass.live-set')).not.toBeNull();
    reload();
    tap('End the set');
    tap('Stopped, without a count');
    tap('Close');
    expect(sessionStorage.getItem('windlass.live-set')).toBeNull();
  });

  it('moves the focus to the planned move, so that one key taps through the set', () => {
    open();
    expect(document.activeElement?.textContent).toBe('Start');
    tap('Start');
    expect(document.activeElement?.textContent).toBe('Rep done');
  });
});
