import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { siteInBrowser } from './siteInBrowser.ts';
import { violations } from './violations.ts';

const here = siteInBrowser();

const headField = (page: Page) => page.getByRole('banner').getByRole('searchbox');
const headings = (page: Page) => page.locator('#search-found h2').allTextContents();

describe('the page of the search', () => {
  it('answers as one types, by kind, marked, and keeps the query in the address', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/search/`, { waitUntil: 'networkidle' });
    const field = page.getByRole('searchbox');
    await field.pressSequentially('tempo');
    await expect.poll(() => headings(page)).toEqual(['Tools', 'Guides', 'Pages', 'Reference']);
    expect(await page.locator('#search-found mark').first().textContent()).toMatch(/tempo/i);
    expect(new URL(page.url()).search).toBe('?q=tempo');
    expect(await violations(page)).toEqual([]);

    await field.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/tools\/[a-z-]+\/$/);
    await page.close();
  });

  it('opens with a query of the address, a name of the library first, in no time', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/search/?q=planSession`);
    const first = page.locator('#search-found a').first();
    await first.waitFor();
    expect(await first.textContent()).toBe('planSession()');
    expect(await headings(page).then(([group]) => group)).toBe('Reference');

    // A tenth of a second is what still feels immediate. Measured in the page, once the index is there.
    const field = page.getByRole('searchbox');
    const ms = await field.evaluate(async (input: HTMLInputElement) => {
      const started = performance.now();
      input.value = 'wamrup';
      input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      const place = document.getElementById('search-found');
      while (!place?.textContent?.includes('Warm-up ramp'))
        await new Promise(requestAnimationFrame);
      return performance.now() - started;
    });
    expect(ms).toBeLessThan(100);
    await page.close();
  });

  it('says what to try where nothing is found', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/search/?q=zzqx`);
    await expect
      .poll(() => page.getByRole('status').first().textContent())
      .toContain('Nothing has');
    await page.locator('#search-found').getByRole('link', { name: 'plates' }).click();
    await page.waitForURL(/q=plates/);
    await expect.poll(() => headings(page)).toContain('Tools');
    await page.close();
  });

  it('lists everything without scripts', async () => {
    const context = await here.browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(`${here.origin}/tools/`);
    await headField(page).fill('tempo');
    await headField(page).press('Enter');
    await page.waitForURL(/\/search\/\?q=tempo$/);
    for (const name of [
      'Seconds at a tempo',
      'Warming up in few sets',
      'Plan a session',
      '@windlass/core/load',
    ])
      expect(await page.locator('main').getByRole('link', { name }).count()).toBe(1);
    await context.close();
  });
});

describe('the search field of every page', () => {
  it('is reached by the key / unless somebody is writing, and is left by Escape', async () => {
    const page = await here.browser.newPage({ viewport: { width: 1280, height: 844 } });
    await page.goto(`${here.origin}/tools/bar-loading/`, { waitUntil: 'networkidle' });
    await page.keyboard.press('/');
    await page.keyboard.type('superset');
    const panel = page.getByRole('search');
    await panel.getByRole('link', { name: 'Isolation, then compound' }).waitFor();
    expect(await violations(page, { within: 'header' })).toEqual([]);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Escape');
    expect(await panel.getByRole('link').count()).toBe(0);
    expect(await headField(page).evaluate((field) => field === document.activeElement)).toBe(true);

    const load = page.getByRole('textbox', { name: 'Load wanted' });
    await load.fill('');
    await load.press('/');
    expect(await load.inputValue()).toBe('/');
    await page.close();
  });

  it('leaves the key alone once that was asked for', async () => {
    const page = await here.browser.newPage({ viewport: { width: 1280, height: 844 } });
    await page.goto(`${here.origin}/search/`, { waitUntil: 'networkidle' });
    await page.getByRole('checkbox', { name: /key \// }).uncheck();
    await page.goto(`${here.origin}/tools/`, { waitUntil: 'networkidle' });
    await page.keyboard.press('/');
    expect(await headField(page).evaluate((field) => field === document.activeElement)).toBe(false);
    await page.close();
  });

  it('fetches nothing until somebody goes there', async () => {
    const page = await here.browser.newPage({ viewport: { width: 1280, height: 844 } });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(new URL(request.url()).pathname));
    await page.goto(`${here.origin}/guides/`, { waitUntil: 'networkidle' });
    const before = asked.length;
    expect(asked).not.toContain('/search/index.json');
    await headField(page).fill('pair');
    await page.getByRole('search').getByRole('link').first().waitFor();
    expect(asked.slice(before)).toContain('/search/index.json');
    await page.close();
  });
});
