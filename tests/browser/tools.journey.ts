import { readFileSync } from 'node:fs';
import { calculators } from '@windlass/calculators';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { siteInBrowser } from './siteInBrowser.ts';
import { violations } from './violations.ts';

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

  it('says when muscles are ready again, later after more sets', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/tools/next-date/`, { waitUntil: 'networkidle' });
    const answer = page.getByRole('status').first();
    const before = await answer.textContent();
    await page.getByRole('textbox', { name: 'Lift 1: sets' }).fill('6');
    await expect.poll(() => answer.textContent()).not.toBe(before);
    expect(new URL(page.url()).search).toContain('cable-row_6');
    const strip = page.getByRole('img', { name: /When each muscle is ready again/ });
    expect(await strip.getAttribute('aria-label')).toMatch(/Lats: earliest .* likely .* cautious/);
    expect(await violations(page)).toEqual([]);
    await page.close();
  });

  it('gives a calendar as a file that others can read', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/tools/calendar/`, { waitUntil: 'networkidle' });
    await page.getByRole('textbox', { name: 'Sessions a week' }).fill('2');
    const answer = page.getByRole('status').first();
    await expect.poll(() => answer.textContent()).toContain('of 8 asked for');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: /^Save for a calendar/ }).click();
    const file = await download;
    expect(file.suggestedFilename()).toBe('boathouse-crew.ics');
    const text = readFileSync(await file.path(), 'utf8');
    expect(text).toMatch(/^BEGIN:VCALENDAR\r\n/);
    expect(text.match(/BEGIN:VEVENT/g)).toHaveLength(8);
    expect(text).toContain('UID:boathouse-crew-1@windlass');
    expect(await violations(page)).toEqual([]);
    await page.close();
  });

  it('reads a log from a file, and lists the row that it cannot read', async () => {
    const page = await here.browser.newPage();
    await page.goto(`${here.origin}/tools/log-review/`, { waitUntil: 'networkidle' });
    const rows = [
      '03.02.2026;Chin-up;105 lb;8',
      '06.02.2026;Chin-up;47,5;9',
      '10.02.2026;Chin-up;much;9',
    ];
    const text = ['Day;Lift;Load;Count', ...rows].join('\n');
    const file = { name: 'log.csv', mimeType: 'text/csv', buffer: Buffer.from(text) };
    await page.locator('input[type=file]').setInputFiles(file);
    const answer = page.getByRole('status').first();
    await expect.poll(() => answer.textContent()).toContain('No next load');
    await page.getByText('How the log is read').click();
    await page.getByRole('radio', { name: 'Day first' }).check();
    await expect.poll(() => answer.textContent()).toContain('Chin-up');
    const main = await page.locator('main').textContent();
    expect(main).toContain('One row was not read');
    expect(main).toContain('10.02.2026;Chin-up;much;9');
    expect(await violations(page)).toEqual([]);
    await page.close();
  });

  it.each(['', '/de'])('says under %s/tools/ with scripts what it says without', async (base) => {
    const context = await here.browser.newContext();
    const bare = await here.browser.newContext({ javaScriptEnabled: false });
    const [page, still] = await Promise.all([context.newPage(), bare.newPage()]);
    const answerOf = (on: Page) => on.getByRole('status').first().textContent();
    for (const { id } of calculators) {
      await still.goto(`${here.origin}${base}/tools/${id}/`);
      await page.goto(`${here.origin}${base}/tools/${id}/`, { waitUntil: 'networkidle' });
      expect(await answerOf(page), id).toBe(await answerOf(still));
    }
    await context.close();
    await bare.close();
  });

  it('has its default answer without scripts', async () => {
    const context = await here.browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    for (const [tool, answer] of [
      ['bar-loading', '82.5'],
      ['load-for-window', 'kg'],
      ['warm-up-ramp', 'kg'],
      ['tempo-seconds', 's'],
      ['next-date', 'Mar'],
      ['calendar', 'sessions'],
      ['log-review', 'kg'],
    ]) {
      await page.goto(`${here.origin}/tools/${tool}/`);
      expect(await page.getByRole('status').first().textContent()).toContain(answer);
    }
    await context.close();
  });
});
