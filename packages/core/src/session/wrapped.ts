const WIDTH = 78;

/** Breaks a text at spaces; an indent for the first line and for those after it. */
export function wrapped(text: string, first: string, later = first): readonly string[] {
  const lines: string[] = [];
  let line = first;
  let isEmpty = true;
  for (const word of text.split(' ')) {
    if (!isEmpty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = later;
      isEmpty = true;
    }
    line += isEmpty ? word : ` ${word}`;
    isEmpty = false;
  }
  return [...lines, line];
}
