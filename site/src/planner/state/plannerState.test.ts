import { describe, expect, it } from 'vitest';
import { type PlannerAction, plannerReducer, startState } from './plannerState.ts';
import type { Json } from './tree.ts';

const draft: Json = { client: { name: 'Helm' }, intent: { unit: 'kg' } };
const after = (...actions: readonly PlannerAction[]) =>
  actions.reduce(plannerReducer, startState(draft));
const name = (value: string): PlannerAction => ({ kind: 'set', path: ['client', 'name'], value });
const unit = (value: string): PlannerAction => ({ kind: 'set', path: ['intent', 'unit'], value });
const undo: PlannerAction = { kind: 'undo' };

describe('plannerReducer', () => {
  it('takes typing in one field back as one step', () => {
    expect(after(name('L'), name('Lo'), name('Look')).past).toEqual([draft]);
    expect(after(name('L'), name('Lo'), undo).draft).toEqual(draft);
  });

  it('takes changes of different fields back one by one', () => {
    const state = after(name('Lookout'), unit('lb'), undo);
    expect(state.draft).toEqual({ client: { name: 'Lookout' }, intent: { unit: 'kg' } });
    expect(plannerReducer(state, undo).draft).toEqual(draft);
  });

  it('takes a whole new plan back in one step', () => {
    const other: Json = { client: {}, gym: {}, intent: {} };
    expect(after({ kind: 'change', to: () => other }).draft).toBe(other);
    expect(after({ kind: 'change', to: () => other }, undo).draft).toBe(draft);
  });

  it('counts a change that changes nothing as none', () => {
    expect(after(name('Helm')).past).toEqual([]);
    expect(after({ kind: 'change', to: (before) => before }).past).toEqual([]);
  });

  it('begins anew with nothing to go back to', () => {
    const state = after(name('Lookout'), { kind: 'start', draft });
    expect(state).toEqual(startState(draft));
    expect(plannerReducer(state, undo)).toBe(state);
  });

  it('keeps the last hundred steps', () => {
    const steps = Array.from({ length: 120 }, (_, step) => [name(`${step}`), unit(`${step}`)]);
    expect(after(...steps.flat()).past).toHaveLength(100);
  });
});
