import { describe, expect, it } from 'vitest';
import { fullText } from './fullText.ts';
import { type Leads, llmsText } from './llmsText.ts';
import { words } from './words.ts';

const leads = Object.fromEntries(
  Object.keys(words.parts).map((part) => [
    part,
    [{ name: part, url: `https://windlass.example/${part}/`, says: `what ${part} answers` }],
  ]),
) as unknown as Leads;

describe('llms.txt', () => {
  it('is a title, a sentence, rules, and a list of links under each heading', () => {
    const text = llmsText(leads);
    expect(
      text.startsWith(`# ${words.title}\n\n> ${words.says}\n\n## ${words.parts.rules}\n`),
    ).toBe(true);
    expect(text.match(/^## .*$/gm)).toEqual(Object.values(words.parts).map((part) => `## ${part}`));
    expect(text).toContain('- [tools](https://windlass.example/tools/): what tools answers');
  });
});

describe('llms-full.txt', () => {
  const entries = [{ name: 'load', module: '@windlass/core/load', answers: 'exact loads' }];

  it('holds every name of an entry, its headings deeper, without links between pages', () => {
    const body =
      'Reads as [formatLoad](formatLoad.md) writes, see [the study](https://doi.org/10.1/x).\n\n## Returns\n\n[`Outcome`](../x.md)&lt;`Load`&gt; of LARGEST\\_LOAD\n\n```ts\nlist[0](next); // \\_\n```';
    const pages = [
      { id: 'load/index', body: 'a list of names' },
      { id: 'load/functions/parseLoad', body },
      { id: 'loader/functions/other', body: 'of another entry' },
    ];
    expect(fullText(entries, pages)).toBe(
      [
        '# Windlass',
        `> ${words.fullSays}`,
        '## @windlass/core/load',
        'exact loads.',
        '### parseLoad',
        'Reads as formatLoad writes, see [the study](https://doi.org/10.1/x).',
        '#### Returns',
        '`Outcome`<`Load`> of LARGEST_LOAD',
        '```ts\nlist[0](next); // \\_\n```\n',
      ].join('\n\n'),
    );
  });
});
