import ts from 'typescript';
import type { Example } from './Example.ts';
import { fencedBlocks } from './fencedBlocks.ts';

/**
 * The `ts` blocks of every `@example` tag in a source, found by the compiler. A tag without such
 * a block is an example without code, so that it is noticed.
 */
export function commentExamples(file: string, source: string): readonly Example[] {
  const parsed = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  const tags = new Map<number, ts.JSDocTag>();
  const visit = (node: ts.Node): void => {
    for (const tag of ts.getJSDocTags(node)) {
      if (tag.tagName.text === 'example') tags.set(tag.pos, tag);
    }
    ts.forEachChild(node, visit);
  };
  visit(parsed);
  return [...tags.values()].flatMap((tag) => {
    const start = tag.getStart(parsed);
    const firstLine = parsed.getLineAndCharacterOfPosition(start).line + 1;
    const text = source.slice(start, tag.end).replace(/^[ \t]*\* ?/gm, '');
    const blocks = fencedBlocks(text).filter(({ info }) => /^tsx?\b/.test(info));
    return blocks.length === 0
      ? [{ file, line: firstLine, code: '' }]
      : blocks.map(({ line, code }) => ({ file, line: firstLine + line, code }));
  });
}
