import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { addressOf, revisionOf, siteFiles } from '../../site/offline/siteFiles.ts';

const folder = mkdtempSync(join(tmpdir(), 'windlass-files-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function put(name: string, content = name): void {
  mkdirSync(dirname(join(folder, name)), { recursive: true });
  writeFileSync(join(folder, name), content);
}

describe('siteFiles', () => {
  it('keeps pages first, the reference later, other languages apart, and leaves out what no person reads', () => {
    const kept = ['404.html', 'assets/page.a1.js', 'index.html', 'tools/pair/index.html'];
    const packed = ['developers/reference/load/index.html', 'developers/schemas/gym.json'];
    const german = ['de/assets/page.b2.js', 'de/index.html'];
    const forMachines = ['sitemap-0.xml', 'worker.js', 'developers.pack'];
    for (const name of [...kept, ...packed, ...german, ...forMachines]) put(name);
    const files = siteFiles(folder);
    expect(files.first.map(({ name }) => name)).toEqual(kept);
    expect(files.packed.map(({ name }) => name)).toEqual(packed);
    expect(files.inLanguage.get('de/')?.map(({ name }) => name)).toEqual(german);
  });
});

describe('addressOf', () => {
  it.each([
    ['/', 'index.html', '/'],
    ['/', 'tools/pair/index.html', '/tools/pair/'],
    ['/lift/', 'index.html', '/lift/'],
    ['/lift/', 'tools/index.html', '/lift/tools/'],
    ['/lift/', '404.html', '/lift/404.html'],
    ['/', 'assets/my-index.html', '/assets/my-index.html'],
  ])('under %s gives %s the address %s', (base, name, address) => {
    expect(addressOf(base, name)).toBe(address);
  });
});

describe('revisionOf', () => {
  it('changes with the content and with nothing else', () => {
    expect(revisionOf('a set')).toBe(revisionOf(Buffer.from('a set')));
    expect(revisionOf('a set')).not.toBe(revisionOf('a sat'));
  });
});
