import { describe, expect, it } from 'vitest';
import { pageFaults } from '../../site/check/pageFaults.ts';

const faultsOf = (html: string, other = '<p id="here"></p>') =>
  pageFaults(
    new Map([
      ['index.html', html],
      ['tools/index.html', other],
    ]),
    new Set(['index.html', 'tools/index.html', 'icon.svg']),
    '/lift/',
  );

describe('pageFaults', () => {
  it.each([
    ['a page and an anchor on it', '<a href="/lift/tools/#here">'],
    ['a relative address', '<a href="tools/">'],
    ['a query', '<a href="/lift/tools/?a=1&amp;b=2">'],
    ['a file', '<link rel="icon" href="/lift/icon.svg">'],
    ['the page itself', '<a href="/lift/">'],
    ['another host, as a link', '<a href="https://doi.org/10.1/x">'],
    ['a script of its own', '<script type="module" src="/lift/icon.svg"></script>'],
  ])('accepts %s', (_, html) => {
    expect(faultsOf(html)).toEqual([]);
  });

  it.each([
    ['a missing page', '<a href="/lift/plan/">', '/lift/plan/ leads nowhere'],
    ['a missing anchor', '<a href="tools/#there">', 'tools/#there names no place on its page'],
    ['an address outside the base', '<a href="/tools/">', '/tools/ is outside /lift/'],
    ['an id given twice', '<p id="a"></p><p id="a"></p>', 'id "a" is given twice'],
    ['a style attribute', '<p style="color:red">', 'a style attribute'],
    ['an inline style sheet', '<style>p{}</style>', 'an inline style sheet'],
    ['an inline script', '<script>1</script>', 'an inline script'],
    ['an inline handler', '<button onclick="go()">', 'an inline event handler'],
    [
      'a script from elsewhere',
      '<script src="https://x.example/a.js"></script>',
      'a file from elsewhere',
    ],
    [
      'a style sheet from elsewhere',
      '<link rel="stylesheet" href="//x.example/a.css">',
      'a file from elsewhere',
    ],
  ])('names %s', (_, html, fault) => {
    expect(faultsOf(html)).toEqual([`index.html: ${fault}`]);
  });
});
