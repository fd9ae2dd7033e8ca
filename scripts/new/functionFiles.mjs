/** A core function with its test and its property test, and the line that exports it. */
export function functionFiles({ folder, name }, [says = `What ${name} answers`], read) {
  const home = `packages/core/src/${folder}`;
  const index = `${home}/index.ts`;
  return {
    made: [
      { path: `${home}/${name}.ts`, text: source(folder, name, says) },
      { path: `${home}/${name}.test.ts`, text: test(name) },
      { path: `${home}/${name}.prop.test.ts`, text: propertyTest(name) },
    ],
    changed: [
      { path: index, text: `${read(index).trimEnd()}\nexport { ${name} } from './${name}.ts';\n` },
    ],
  };
}

const basis = (folder) => (folder === 'basis' ? './requireNumber.ts' : '../basis/index.ts');

const source = (folder, name, says) => `import { requireNumber } from '${basis(folder)}';

/**
 * ${says.replace(/\.$/, '')}.
 *
 * Formula and its source, units and range of the argument and the result. At 0 it is 0.
 *
 * @param amount 0 or more.
 * @throws RangeError for an amount below 0.
 * @example
 * \`\`\`ts
 * import { ${name} } from '@windlass/core/${folder}';
 * ${name}(8); // 4
 * \`\`\`
 */
export function ${name}(amount: number): number {
  requireNumber('${name}', 'amount', amount, 0);
  return amount / 2;
}
`;

const test = (name) => `import { describe, expect, it } from 'vitest';
import { ${name} } from './${name}.ts';

describe('${name}', () => {
  it('is half, by hand', () => {
    expect(${name}(8)).toBe(4);
    expect(${name}(0)).toBe(0);
  });

  it('refuses less than nothing', () => {
    expect(() => ${name}(-1)).toThrow(/${name}: amount/);
  });
});
`;

const propertyTest = (name) => `import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ${name} } from './${name}.ts';

const amounts = fc.double({ min: 0, max: 1e6, noNaN: true });

describe('${name}', () => {
  it('never falls as the amount grows', () => {
    fc.assert(
      fc.property(amounts, amounts, (one, other) => {
        const [less, more] = one < other ? [one, other] : [other, one];
        expect(${name}(less)).toBeLessThanOrEqual(${name}(more));
      }),
    );
  });
});
`;
