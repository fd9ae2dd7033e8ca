import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../docs/workspaceFiles.ts';
import { shippedPackages } from './shippedPackages.ts';
import { thirdParty } from './thirdParty.ts';

/** Licences that let anybody use and change what is built on them; the last is for fonts. */
const permissive = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', '0BSD', 'OFL-1.1'];
const packages = shippedPackages();

describe('what reaches users', () => {
  it.each(packages)('$name lets anybody use what is built on it', ({ licence, text }) => {
    expect(permissive).toContain(licence);
    expect(text).not.toBe('');
  });

  it('is listed with its licences: npm run licences', () => {
    expect(readFileSync(join(root, 'THIRD-PARTY.md'), 'utf8')).toBe(thirdParty(packages));
  });
});
