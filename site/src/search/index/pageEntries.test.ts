import { describe, expect, it } from 'vitest';
import { pageEntries } from './pageEntries.ts';

const page = (main: string, description = 'What it is.') =>
  `<html><head><meta name="description" content="${description}"></head><body><nav>Menu</nav><main>${main}</main></body></html>`;

describe('pageEntries', () => {
  it('takes a guide apart by its sections, without the tool in it', () => {
    const html = page(
      '<article><h1>Slow reps</h1><p>What it is.</p><p>Opening words.</p>' +
        '<h2 id="why">Why &amp; how</h2><p>The <em>load</em> comes down.</p>' +
        '<div data-calculator="pair"><h2 class="wl-heading">Why</h2>82.5</div>' +
        '<h2 id="end">The end</h2><p>Stop.</p></article>',
    );
    expect(pageEntries('guides/slow/', html)).toEqual([
      {
        group: 'guides',
        path: 'guides/slow/',
        title: 'Slow reps',
        section: '',
        text: 'What it is.',
        terms: 'Opening words.',
      },
      {
        group: 'guides',
        path: 'guides/slow/#why',
        title: 'Slow reps',
        section: 'Why & how',
        text: 'The load comes down.',
        terms: '',
      },
      {
        group: 'guides',
        path: 'guides/slow/#end',
        title: 'Slow reps',
        section: 'The end',
        text: 'Stop.',
        terms: '',
      },
    ]);
  });

  it('takes of the reference the name, the first sentence and the properties', () => {
    const html = page(
      '<article><h1>Band</h1><p class="reference-answers">Interface in basis</p><div class="reference">' +
        '<p>Where a number probably lies.</p><p>More.</p><table><tr><td><a id="property-low"></a> <code>low</code></td></tr></table></div></article>',
    );
    expect(pageEntries('developers/reference/basis/interfaces/Band/', html)).toEqual([
      {
        group: 'reference',
        path: 'developers/reference/basis/interfaces/Band/',
        title: 'Band',
        section: '',
        text: 'Where a number probably lies.',
        terms: 'low',
      },
    ]);
  });

  it('takes of any other page what it says of itself and its headings', () => {
    const html = page('<h1>Plan</h1><div><h2>Pull day</h2><p>60 kg</p></div>', 'A whole session.');
    expect(pageEntries('plan/', html)).toEqual([
      {
        group: 'pages',
        path: 'plan/',
        title: 'Plan',
        section: '',
        text: 'A whole session.',
        terms: 'Pull day',
      },
    ]);
  });

  it('leaves a page out that has no title', () => {
    expect(pageEntries('frame/', page('<p>A frame.</p>'))).toEqual([]);
  });
});
