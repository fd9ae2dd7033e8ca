import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { languages } from '../../../packages/calculators/languages/readCatalogue.ts';

const folder = new URL('../content/guides/', import.meta.url);
const namesIn = (at: URL) => readdirSync(at).filter((name) => name.endsWith('.mdx'));
const guides = namesIn(folder);

/** What a translation may not change: order, sources, tools, headings, lists and rows of tables. */
function frameOf(file: URL): readonly string[] {
  return readFileSync(file, 'utf8')
    .split('\n')
    .map((line) => /^(order: \d+|<.*\/>$|#+ |- |\d\. |\| *|\*\*)/.exec(line)?.[0] ?? '')
    .filter((mark) => mark !== '');
}

describe.each(languages)('the guides in %s', (language) => {
  const translated = new URL(`${language}/`, folder);

  it('are all there, and no other', () => {
    expect(namesIn(translated)).toEqual(guides);
  });

  it.each(guides)('%s has the order, sources, tools and parts of the English one', (name) => {
    expect(frameOf(new URL(name, translated))).toEqual(frameOf(new URL(name, folder)));
  });

  it.each(guides)('%s has the same figures', (name) => {
    const figures = (file: URL) =>
      (readFileSync(file, 'utf8').match(/\d+(?:[.,]\d+)*/g) ?? [])
        .map((figure) => figure.replaceAll(/[.,]/g, ''))
        .sort();
    expect(figures(new URL(name, translated))).toEqual(figures(new URL(name, folder)));
  });
});
