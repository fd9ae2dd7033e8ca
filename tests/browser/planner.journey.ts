import { describe, expect, it } from 'vitest';
import { siteInBrowser } from './siteInBrowser.ts';

const here = siteInBrowser();

describe('the planner', () => {
  it('has a whole plan without scripts', async () => {
    const context = await here.browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(`${here.origin}/plan/`);
    expect(await page.locator('article').count()).toBe(3);
    expect(await page.locator('main').textContent()).not.toMatch(/NaN|Infinity|undefined/);
    await context.close();
  });

  it('plans anew with every change, and the link carries it', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/plan/`, { waitUntil: 'networkidle' });
    const first = page.locator('article').first();
    const before = await first.textContent();
    const fewest = page
      .getByRole('group', { name: 'Lift 1' })
      .getByRole('textbox', { name: 'Reps from' });
    await fewest.fill('4');
    await page
      .getByRole('group', { name: 'Lift 1' })
      .getByRole('textbox', { name: 'to', exact: true })
      .fill('6');
    await expect.poll(() => first.textContent()).toContain('4–6');
    expect(await first.textContent()).not.toBe(before);
    await expect.poll(() => new URL(page.url()).hash.length).toBeGreaterThan(10);
    expect(page.url().length).toBeLessThan(2000);
    const other = await here.browser.newPage();
    await other.goto(page.url(), { waitUntil: 'networkidle' });
    await expect.poll(() => other.locator('article').first().textContent()).toContain('4–6');
    await other.close();
    await page.close();
  });

  it('keeps the last good plan while a value is wrong', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/plan/`, { waitUntil: 'networkidle' });
    const lift = page.getByRole('group', { name: 'Lift 1' });
    await lift.getByRole('textbox', { name: 'Reps from' }).fill('40');
    const field = lift.getByRole('textbox', { name: 'Reps from' });
    await expect.poll(() => page.locator('main').textContent()).toContain('upside down');
    expect(await field.inputValue()).toBe('40');
    expect(await page.locator('article').first().textContent()).toContain('8–11');
    await page.close();
  });

  it('says so when a link is damaged, and loses nothing', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/plan/#1.damaged`, { waitUntil: 'networkidle' });
    await expect.poll(() => page.locator('main').textContent()).toMatch(/link/i);
    expect(await page.locator('article').count()).toBe(3);
    await page.close();
  });

  it('plans for every person of the demonstration', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/plan/`, { waitUntil: 'networkidle' });
    for (const [name, person] of [
      ['Leg day', 'Helm'],
      ['First day', 'New crew member'],
      ['Pull day', 'Winch hand'],
    ] as const) {
      await page.getByRole('button', { name, exact: true }).click();
      await expect.poll(() => page.locator('main').textContent()).toContain(person);
      expect(await page.locator('main').textContent()).not.toMatch(/NaN|Infinity|undefined/);
    }
    await page.close();
  });
});
