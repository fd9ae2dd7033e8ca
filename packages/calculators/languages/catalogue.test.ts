import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogueFaults } from './missing.ts';
import { languages, readCatalogue } from './readCatalogue.ts';

const root = join(import.meta.dirname, '..', '..', '..');

describe.each(languages)('the texts in %s', (language) => {
  it('are all there, with the same values, and none is left over', () => {
    expect(catalogueFaults(root, readCatalogue(join(root, 'packages'), language))).toEqual([]);
  });
});
