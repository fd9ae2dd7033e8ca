/** A fenced code block of a Markdown text. */
export interface FencedBlock {
  /** What follows the opening fence: `ts run`. */
  readonly info: string;
  /** Line of the text on which the code starts, from 0. */
  readonly line: number;
  readonly code: string;
}

/** The fenced code blocks of a Markdown text, in order. */
export function fencedBlocks(text: string): readonly FencedBlock[] {
  const blocks: FencedBlock[] = [];
  let open: { info: string; line: number; lines: string[] } | undefined;
  for (const [index, line] of text.split('\n').entries()) {
    const fence = /^\s*```(.*)$/.exec(line);
    if (fence === null) {
      open?.lines.push(line);
    } else if (open === undefined) {
      open = { info: (fence[1] ?? '').trim(), line: index + 1, lines: [] };
    } else {
      blocks.push({ info: open.info, line: open.line, code: open.lines.join('\n') });
      open = undefined;
    }
  }
  return blocks;
}
