import { describe, expect, it } from 'vitest';
import { withEverything } from './everythingList.ts';

const html = '<h2>All</h2><div class="part-body" id="everything"></div>';
const place = { section: '', text: 'Says "this" & that' };

describe('withEverything', () => {
  it('lists pages by kind under the base path, of the reference only its entries', () => {
    const list = withEverything(
      html,
      [
        { ...place, group: 'tools', path: 'tools/pair/', title: 'A < B' },
        { ...place, group: 'guides', path: 'guides/a/#b', title: 'Guide', section: 'B' },
        {
          ...place,
          group: 'reference',
          path: 'developers/reference/load/',
          title: '@windlass/core/load',
        },
        {
          ...place,
          group: 'reference',
          path: 'developers/reference/load/functions/kg/',
          title: 'kg()',
        },
      ],
      '/lift/',
    );
    expect(list).toContain(
      '<a href="/lift/tools/pair/">A &lt; B</a><p>Says &quot;this&quot; &amp; that</p>',
    );
    expect(list).toContain('/lift/developers/reference/load/"');
    expect(list).not.toContain('guides/a/');
    expect(list).not.toContain('kg()');
  });

  it('refuses a page without a place for it', () => {
    expect(() => withEverything('<main></main>', [], '/')).toThrow('no place');
  });
});
