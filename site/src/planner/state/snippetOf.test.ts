import * as schema from '@windlass/core/schema';
import * as session from '@windlass/core/session';
import { describe, expect, it } from 'vitest';
import { examples } from './examples.ts';
import { readDraft } from './readDraft.ts';
import { snippetOf } from './snippetOf.ts';
import { setAt } from './tree.ts';

/** What the snippet prints, with the library in place of its imports. */
function printed(code: string): string {
  const lines: string[] = [];
  const body = code.replace(/^import .*$/gm, '');
  const names = ['readSessionFile', 'planSession', 'printSheet', 'sessionSheet', 'console'];
  const given = { ...schema, ...session, console: { log: (line: string) => lines.push(line) } };
  const values = names.map((name) => given[name as keyof typeof given]);
  new Function(...names, body)(...values);
  return lines.join('\n');
}

describe('snippetOf', () => {
  it.each(Object.entries(examples))('prints the sheet that the page shows: %s', (_, draft) => {
    const read = readDraft(draft);
    expect(read.ok).toBe(true);
    if (!read.ok) return;
    const sheet = session.sessionSheet(session.planSession(read.value));
    expect(printed(snippetOf(draft))).toBe(session.printSheet(sheet));
  });

  it('carries typed numbers as numbers, and words with quotes whole', () => {
    const named = setAt(examples['pull-day'], ['client', 'name'], 'The "Cox": no. 2');
    const code = snippetOf(setAt(named, ['intent', 'lifts', 0, 'sets'], '1'));
    expect(code).toContain('sets: 1');
    expect(printed(code)).toContain('The "Cox": no. 2, 2027-03-15');
  });

  it('says what would be right where the plan has a mistake', () => {
    const code = snippetOf(setAt(examples['pull-day'], ['intent', 'lifts', 0, 'sets'], 'x'));
    expect(printed(code)).toMatch(/^intent\.lifts\.0\.sets: Give the number of sets/);
  });
});
