import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { siteInBrowser } from './siteInBrowser.ts';
import { violations } from './violations.ts';

const dist = join(dirname(dirname(dirname(fileURLToPath(import.meta.url)))), 'site', 'dist');
const map = readFileSync(join(dist, 'sitemap-0.xml'), 'utf8');
const mapped = [...map.matchAll(/<loc>[^<]*?:\/\/[^/<]+([^<]*)<\/loc>/g)].map(
  ([, path]) => path ?? '/',
);

/** Every page written by hand, and of the pages made from doc comments each hundredth. */
const paths = mapped.filter(
  (path, index) => !path.startsWith('/developers/reference/') || index % 100 === 0,
);

const here = siteInBrowser();

/** What a page must not do while it loads, noted as it happens. */
function watch(page: Page): readonly string[] {
  const faults: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith('http') && url.origin !== here.origin) {
      faults.push(`request to ${url.origin}`);
    }
  });
  return faults;
}

describe('every page', () => {
  it('is in the site map', () => {
    expect(paths).toEqual(
      expect.arrayContaining(['/', '/plan/', '/tools/', '/guides/', '/developers/', '/evidence/']),
    );
    expect(paths.length).toBeGreaterThan(20);
  });

  it('that does not exist is answered with 404 and a way on', async () => {
    const page = await here.browser.newPage();
    const response = await page.goto(`${here.origin}/tools/nothing-here/`);
    expect(response?.status()).toBe(404);
    expect(await page.getByRole('link', { name: /plan/i }).count()).toBeGreaterThan(0);
    await page.close();
  });

  it.each(paths)('%s loads quietly, is accessible, and fits a phone', async (path) => {
    const page = await here.browser.newPage({ viewport: { width: 390, height: 844 } });
    const faults = watch(page);
    await page.goto(`${here.origin}${path}`, { waitUntil: 'networkidle' });
    expect(await violations(page)).toEqual([]);
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBe(0);
    await page.setViewportSize({ width: 1280, height: 844 });
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await violations(page)).toEqual([]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it.each(paths.filter((path) => !path.startsWith('/developers/reference/')))(
    '%s leads only to pages that exist',
    async (path) => {
      const page = await here.browser.newPage();
      await page.goto(`${here.origin}${path}`);
      const links = await page.$$eval('a[href]', (found) =>
        found.map((link) => (link as HTMLAnchorElement).href),
      );
      const own = [
        ...new Set(
          links
            .filter((href) => href.startsWith(here.origin))
            .map((href) => href.split(/[#?]/)[0] ?? ''),
        ),
      ];
      const missing: string[] = [];
      for (const href of own) {
        const { status } = await fetch(href);
        if (status !== 200) missing.push(href);
      }
      expect(missing).toEqual([]);
      await page.close();
    },
  );
});
