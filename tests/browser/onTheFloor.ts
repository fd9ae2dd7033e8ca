import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { SiteInBrowser } from './siteInBrowser.ts';

export const phone = { width: 390, height: 844 };

/** The floor page in a browser of its own, ready to be used. */
export async function openFloor(
  here: SiteInBrowser,
  fragment = '',
  context?: BrowserContext,
): Promise<Page> {
  const own = context ?? (await here.browser.newContext({ viewport: phone }));
  const page = await own.newPage();
  await page.goto(`${here.origin}/floor/${fragment}`, { waitUntil: 'networkidle' });
  await page.locator('html:not(.opening)').waitFor();
  return page;
}

/** Presses the first button of that name. */
export const press = (page: Page, name: string) =>
  page.getByRole('button', { name, exact: true }).first().click();

/** What the first such element says. */
export const shown = async (page: Page, selector: string) =>
  (await page.locator(selector).first().textContent())?.replace(/\s+/g, ' ').trim();

/** Does the three warm-up sets of the row. */
export async function warmUp(page: Page): Promise<void> {
  for (const set of ['warm-up 2 of 3', 'warm-up 3 of 3', 'set 1 of 2']) {
    await press(page, 'Done');
    await expect.poll(() => shown(page, '.floor-place')).toContain(set);
  }
}
