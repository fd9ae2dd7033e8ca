import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { openFloor, phone, press, warmUp } from './onTheFloor.ts';
import { scriptSizes } from './scriptSizes.ts';
import { siteInBrowser } from './siteInBrowser.ts';
import { violations } from './violations.ts';

const here = siteInBrowser();

describe('the floor page', () => {
  it('is accessible in every state, with targets of at least 48 pixels and nothing cut', async () => {
    const page = await openFloor(here);
    const check = async () => {
      expect(await violations(page)).toEqual([]);
      const small = await page.$$eval(
        '.floor :is(button, a), dialog[open] :is(button, label)',
        (found) =>
          found
            .filter((element) => element.checkVisibility())
            .map((element) => ({ name: element.textContent, box: element.getBoundingClientRect() }))
            .filter(({ box }) => box.width < 48 || box.height < 48 || box.right > innerWidth)
            .map(({ name, box }) => `${name}: ${box.width} × ${box.height}`),
      );
      expect(small).toEqual([]);
    };
    await check();
    await warmUp(page);
    await check();
    const dialogs = ['Another load', 'Go on past failure', 'Sound and count'];
    for (const name of dialogs) {
      await press(page, 'More');
      await press(page, name);
      await page.waitForSelector('dialog[open]');
      await page.waitForTimeout(300);
      await check();
      await page.keyboard.press('Escape');
    }
    await press(page, 'Start the set');
    await check();
    await page.getByRole('button', { name: /A sign to stop/ }).click();
    await page.waitForSelector('dialog[open]');
    await check();
    await page.keyboard.press('Escape');
    await check();
    await press(page, 'Nobody knows');
    await press(page, 'More');
    await press(page, 'End the session here');
    await page.locator('.floor-over').waitFor();
    await check();
    await page.context().close();
  });

  it('shows the set, its load and its button on a phone without scrolling', async () => {
    const page = await openFloor(here);
    await warmUp(page);
    const bottoms = await page.$$eval(
      '.floor-number, .floor-change, .floor-bar, .floor-tempo, .floor-primary, .floor-sign',
      (found) => found.map((element) => element.getBoundingClientRect().bottom),
    );
    expect(bottoms).toHaveLength(6);
    expect(Math.max(...bottoms)).toBeLessThanOrEqual(phone.height);
    await page.context().close();
  });

  it('runs with at most 90 kB of script, compressed', () => {
    const dist = join(dirname(dirname(dirname(fileURLToPath(import.meta.url)))), 'site', 'dist');
    const sizes = scriptSizes(join(dist, 'floor', 'index.html'), dist);
    expect(sizes.size).toBeGreaterThan(0);
    expect([...sizes.values()].reduce((sum, size) => sum + size, 0)).toBeLessThan(90_000);
  });
});
