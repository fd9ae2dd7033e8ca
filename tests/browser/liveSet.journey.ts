import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { siteInBrowser } from './siteInBrowser.ts';
import { violations } from './violations.ts';

const here = siteInBrowser();

async function openLiveSet(query = ''): Promise<Page> {
  const page = await here.browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.goto(`${here.origin}/tools/past-failure/${query}`, { waitUntil: 'networkidle' });
  await page.getByRole('button', { name: 'Do this set now, step by step' }).press('Enter');
  await page.waitForSelector('dialog[open]');
  return page;
}

const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent);

describe('a set followed live', () => {
  it('goes through by one key, over a reload, to its record', async () => {
    const page = await openLiveSet();
    for (const move of ['Start', 'Rep done', 'Rep done']) {
      await expect.poll(() => focused(page)).toBe(move);
      await page.keyboard.press('Enter');
    }
    await page.keyboard.press('Tab');
    expect(await focused(page)).toBe('Not finished');
    await page.keyboard.press('Enter');
    await expect.poll(() => focused(page)).toBe('Hold begins');
    await page.keyboard.press('Space');
    await page.reload({ waitUntil: 'networkidle' });
    await page.waitForSelector('dialog[open]');
    await expect.poll(() => focused(page)).toBe('Hold is over');
    await page.keyboard.press('Enter');
    // The focus moves on to the next planned move; a key pressed before that would go there.
    await expect.poll(() => focused(page)).not.toBe('Hold is over');
    await page.getByRole('button', { name: 'End the set' }).press('Enter');
    await expect.poll(() => focused(page)).toBe('How does it end?');
    await page.getByRole('button', { name: 'Stopped, without a count' }).press('Enter');
    await expect.poll(() => page.locator('dialog').textContent()).toContain('2 full reps');
    await page.close();
  });

  it('has targets of at least 48 pixels, nothing cut, and a structure that can be heard', async () => {
    const page = await openLiveSet();
    await page.keyboard.press('Enter');
    const small = await page.$$eval('dialog button', (buttons) =>
      buttons
        .map((button) => ({ name: button.textContent, box: button.getBoundingClientRect() }))
        .filter(({ box }) => box.width < 48 || box.height < 48 || box.right > innerWidth)
        .map(({ name }) => name),
    );
    expect(small).toEqual([]);
    expect(await violations(page, { within: 'dialog', without: ['region'] })).toEqual([]);
    await page.close();
  });

  it('is closed by Escape and goes on where it was', async () => {
    const page = await openLiveSet();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('dialog').count()).toBe(0);
    await page.getByRole('button', { name: 'Back to the set that is running' }).click();
    await expect.poll(() => focused(page)).toBe('Rep done');
    await page.close();
  });
});

describe('a chain that is not offered', () => {
  it('offers the nearest one, which takes its place without a jump of the form', async () => {
    const page = await here.browser.newPage({ viewport: { width: 390, height: 844 } });
    await page.goto(`${here.origin}/tools/past-failure/?stage1=lower&stage2=hold-contracted`, {
      waitUntil: 'networkidle',
    });
    const top = () => page.evaluate(() => document.querySelector('form')?.offsetTop);
    const before = await top();
    expect(await page.getByRole('status').first().textContent()).toContain('Not offered here');
    await page.getByRole('button', { name: /^Instead: lift to failure, then hold/ }).click();
    await expect.poll(() => page.getByRole('status').first().textContent()).toContain('in 8 of 10');
    expect(new URL(page.url()).search).toBe('');
    expect(await top()).toBe(before);
    await page.close();
  });
});

describe('a long list', () => {
  it('is searched by a few letters, from the keyboard', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/tools/exchange/`, { waitUntil: 'networkidle' });
    const field = page.getByRole('combobox', { name: 'Exercise that cannot stay' });
    await field.focus();
    await page.keyboard.type('squat split bar');
    await page.keyboard.press('Enter');
    await expect.poll(() => field.inputValue()).toMatch(/split squat/i);
    expect(new URL(page.url()).search).toMatch(/exercise=.*split-squat/);
    await field.focus();
    await page.keyboard.type('leg');
    await page.keyboard.press('Escape');
    await expect.poll(() => field.inputValue()).toMatch(/split squat/i);
    await page.close();
  });
});
