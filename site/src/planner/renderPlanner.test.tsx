import { planSession, sessionSheet } from '@windlass/core/session';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { PlannerApp } from './PlannerApp.tsx';
import { renderPlanner } from './renderPlanner.tsx';
import { startPlan } from './startPlan.ts';

const { markup, start } = renderPlanner();
const { question } = JSON.parse(start);

describe('renderPlanner', () => {
  it('has the whole first plan in it', () => {
    const sheet = sessionSheet(planSession(question));
    expect(sheet.kind).toBe('sheet');
    if (sheet.kind !== 'sheet') return;
    for (const lift of sheet.lifts) {
      expect(markup).toContain(lift.name);
      if (lift.kind === 'planned') expect(markup).toContain(lift.load.loading);
    }
    expect(markup).toContain('Monday 15 March 2027');
  });

  it('has nothing that the content-security policy of the site refuses', () => {
    expect(markup).not.toMatch(/<script|\sstyle=|\son\w+=/i);
  });

  it('is what the page renders from the plan that comes with it', () => {
    expect(renderToString(<PlannerApp start={JSON.parse(start)} />)).toBe(markup);
    expect(JSON.parse(start)).toEqual(startPlan(question));
  });
});
