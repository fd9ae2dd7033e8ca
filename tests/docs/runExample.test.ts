import { describe, expect, it } from 'vitest';
import { runExample } from './runExample.ts';
import { typeErrors } from './typeErrors.ts';

const run = (code: string) => runExample({ file: 'page.md', line: 1, code });

describe('runExample', () => {
  it.each([
    ["import { kg, toKg } from '@windlass/core/load';\ntoKg(kg(2.5)); // 2.5"],
    ["import { basename } from 'node:path';\nbasename('/a/b'); // 'b'"],
    ['1 / 3; // 0.333'],
    ['0.1 + 0.2; // 0.3'],
    ['55.00000000000001; // 55'],
    ['-1 / 3; // -0.33'],
    ['Number.NaN; // NaN'],
    ["({ kind: 'none', gap: undefined }); // { kind: 'none' }"],
    ["[1, ['a'], null, true]; // [1, ['a'], null, true]"],
    ["'60\\u00a0kg'; // '60 kg'"],
    ['[1,\n 2];\n// [\n//   1, 2\n// ]'],
    ['console.log(1 + 1); // 2'],
    ['await Promise.resolve(3); // 3'],
    ['let count = 0;\ncount += 1;\ncount; // 1'],
    ['// Words before an expression are words.\n1; // 1'],
  ])('has nothing to say about %j', async (code) => {
    expect(await run(code)).toEqual([]);
  });

  it.each([
    ['1 + 1; // 3', 'line 1: the value is 2, shown is 3'],
    ['\n54.6; // 55', 'line 2: the value is 54.6, shown is 55'],
    ['1 / 3; // 0.334', 'shown is 0.334'],
    ["'a'; // 'b'", 'line 1'],
    ['({ a: 1, b: 2 }); // { a: 1 }', 'the value.b is 2, shown is not shown'],
    ['({ a: 1 }); // { a: 1, b: 2 }', 'the value.b is undefined, shown is 2'],
    ['[1]; // [1, 2]', 'shown is 2 items'],
    ['[1, 2]; // [1, 3]', 'the value[1] is 2, shown is 3'],
    ['1; // about one', 'the comment is no value to compare with: about one'],
    ['1;\n// The next step.', 'the comment is no value'],
    ['missing();', 'ReferenceError: missing is not defined'],
    ["import { missing } from '@windlass/core/load';\nmissing();", 'TypeError'],
    ["import '@windlass/core/nowhere';", 'Cannot find'],
    ["throw new RangeError('no');", 'RangeError: no'],
    ['', 'the example has no ts block'],
  ])('complains about %j', async (code, complaint) => {
    const complaints = await run(code);
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toContain(complaint);
  });
});

describe('typeErrors', () => {
  it('keeps examples apart and finds what would only fail to compile', () => {
    const examples = [
      "import { kg, type Load } from '@windlass/core/load';\nconst load: Load = kg(20);",
      "import { kg } from '@windlass/core/load';\nconst load: Load = kg(20);",
      "import { kg } from '@windlass/core/load';\nkg('20');",
    ].map((code) => ({ file: 'page.md', line: 1, code }));
    expect(typeErrors(examples)).toEqual([
      [],
      ["Cannot find name 'Load'."],
      ["Argument of type 'string' is not assignable to parameter of type 'number'."],
    ]);
  });
});
