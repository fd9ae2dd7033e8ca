import type { Example } from './Example.ts';
import { fencedBlocks } from './fencedBlocks.ts';

/** The blocks of a Markdown page that are marked `ts run`. */
export function pageExamples(file: string, text: string): readonly Example[] {
  return fencedBlocks(text)
    .filter(({ info }) => /^ts\s(?:.*\s)?run(?:\s|$)/.test(info))
    .map(({ line, code }) => ({ file, line: line + 1, code }));
}
