import { describe, expect, it } from 'vitest';
import { siteInBrowser } from './siteInBrowser.ts';

const here = siteInBrowser();

describe('a tool', () => {
  it('answers a change at once and keeps it in the address', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/tools/bar-loading/`, { waitUntil: 'networkidle' });
    const answer = page.getByRole('status').first();
    await page.getByRole('textbox', { name: 'Load wanted' }).fill('62,5');
    await expect.poll(() => answer.textContent()).toContain('62.5');
    expect(new URL(page.url()).search).toContain('62,5kg');
    await page.reload({ waitUntil: 'networkidle' });
    expect(await answer.textContent()).toContain('62.5');
    await page.close();
  });

  it('keeps a wrong value, says what would be right, and leaves the last good answer', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/tools/bar-loading/`, { waitUntil: 'networkidle' });
    const field = page.getByRole('textbox', { name: 'Load wanted' });
    await field.fill('sixty');
    await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
    expect(await field.inputValue()).toBe('sixty');
    const main = await page.locator('main').textContent();
    expect(main).toContain('62.5 kg or 135 lb');
    expect(await page.getByRole('status').first().textContent()).toContain('82.5');
    expect(main).not.toMatch(/NaN|Infinity|undefined/);
    await page.close();
  });

  it('steps by what the plates can make, from the keyboard', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/tools/bar-loading/`, { waitUntil: 'networkidle' });
    const field = page.getByRole('textbox', { name: 'Load wanted' });
    await page.getByRole('button', { name: 'Load wanted: one step more' }).press('Enter');
    await expect.poll(() => field.inputValue()).not.toBe('82.5');
    expect(Number(await field.inputValue())).toBeGreaterThan(82.5);
    await page.close();
  });

  it('has its default answer without scripts', async () => {
    const context = await here.browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    for (const [tool, answer] of [
      ['bar-loading', '82.5'],
      ['load-for-window', 'kg'],
      ['warm-up-ramp', 'kg'],
      ['tempo-seconds', 's'],
    ]) {
      await page.goto(`${here.origin}/tools/${tool}/`);
      expect(await page.getByRole('status').first().textContent()).toContain(answer);
    }
    await context.close();
  });
});
