import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { FloorApp } from './FloorApp.tsx';
import { renderFloor } from './renderFloor.tsx';
import type { FloorSession } from './session/FloorSession.ts';

const { markup, session } = renderFloor();

describe('renderFloor', () => {
  it('has every set of the demonstration in it, to be read without a script', () => {
    const { lifts, steps }: FloorSession = JSON.parse(session);
    for (const { name } of lifts) expect(markup).toContain(name);
    expect(markup.match(/class="listed-name"/g)).toHaveLength(steps.length);
  });

  it('has nothing that the content-security policy of the site refuses', () => {
    expect(markup).not.toMatch(/<script|\sstyle=|\son\w+=/i);
  });

  it('is what the page renders from the session that comes with it', () => {
    expect(renderToString(<FloorApp served={JSON.parse(session)} />)).toBe(markup);
  });
});
