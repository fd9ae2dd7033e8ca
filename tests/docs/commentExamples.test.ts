import { describe, expect, it } from 'vitest';
import { commentExamples } from './commentExamples.ts';
import { pageExamples } from './pageExamples.ts';

const fence = '```';

describe('commentExamples', () => {
  it('finds the ts blocks of example tags with their lines', () => {
    const source = [
      '/**',
      ' * Adds.',
      ' * @example',
      ` * ${fence}ts`,
      " * import { add } from './add.ts';",
      ' *',
      ' * if (true) {',
      ' *   add(1, 2); // 3',
      ' * }',
      ` * ${fence}`,
      ' */',
      'export const add = (a: number, b: number) => a + b;',
    ].join('\n');
    expect(commentExamples('add.ts', source)).toEqual([
      {
        file: 'add.ts',
        line: 5,
        code: "import { add } from './add.ts';\n\nif (true) {\n  add(1, 2); // 3\n}",
      },
    ]);
  });

  it('is not misled by strings that look like comments', () => {
    const source = `export const text = '/** @example ${fence}ts 1; // 2 ${fence} */';`;
    expect(commentExamples('text.ts', source)).toEqual([]);
  });

  it('gives an example without a block as one without code', () => {
    const source = '/**\n * Adds.\n * @example add(1, 2)\n */\nexport function add() {}';
    expect(commentExamples('add.ts', source)).toEqual([{ file: 'add.ts', line: 3, code: '' }]);
  });
});

describe('pageExamples', () => {
  it('takes the blocks marked to run and leaves the others', () => {
    const page = `Text\n${fence}ts run\n1 + 1; // 2\n${fence}\n${fence}ts\nsketch();\n${fence}\n`;
    expect(pageExamples('page.md', page)).toEqual([
      { file: 'page.md', line: 3, code: '1 + 1; // 2' },
    ]);
  });
});
