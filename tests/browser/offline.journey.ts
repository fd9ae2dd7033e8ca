import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { writeWorker } from '../../site/offline/writeWorker.ts';
import { openBrowser } from './openBrowser.ts';
import { type ServedSite, serveSite } from './serveSite.ts';

const dist = join(dirname(dirname(dirname(fileURLToPath(import.meta.url)))), 'site', 'dist');

/** A worker fetches, unpacks and changes over in its own time. */
const slow = { timeout: 20_000 };

let browser: Browser;
let site: ServedSite;
let context: BrowserContext;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  site = await serveSite();
  context = await browser.newContext();
});
afterEach(async () => {
  await context.close();
  site.stop();
});

/** One visit, until the site is kept on the device. */
async function visit(path: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${site.origin}${path}`);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null), slow)
    .toBe(true);
  return page;
}

/** No network for the browser, and nobody there to answer. */
async function cutOff(): Promise<void> {
  site.stop();
  await context.setOffline(true);
}

function watch(page: Page): readonly string[] {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  return faults;
}

describe('after one visit, without a network', () => {
  it('the planner, a tool with its state in the address, and a guide open and answer', async () => {
    const page = await visit('/');
    await cutOff();
    const faults = watch(page);

    await page.goto(`${site.origin}/tools/bar-loading/?target=62,5kg`);
    const answer = page.getByRole('status').first();
    await expect.poll(() => answer.textContent()).toContain('62.5');
    await page.getByRole('textbox', { name: 'Load wanted' }).fill('100');
    await expect.poll(() => answer.textContent()).toContain('100');

    await page.goto(`${site.origin}/plan/`);
    await page.getByRole('button', { name: 'Leg day' }).click();
    await expect.poll(() => page.locator('main').textContent()).toMatch(/leg press|squat/i);

    await page.goto(`${site.origin}/guides/slow-reps/`);
    expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
    await page.goto(`${site.origin}/search/?q=plates`);
    await page.locator('#search-found').getByRole('link', { name: 'Loading the bar' }).waitFor();
    const font = await page.evaluate(() =>
      document.fonts.ready.then((fonts) => fonts.check('16px "Archivo Variable"')),
    );
    expect(font).toBe(true);
    expect(faults).toEqual([]);
  });

  it('the pages in another language are there once one of them was visited', async () => {
    const page = await visit('/de/tools/');
    const there = () =>
      page.evaluate(async () => (await caches.match('/de/tools/tempo-seconds/')) !== undefined);
    await expect.poll(there, slow).toBe(true);
    await expect
      .poll(() => page.evaluate(async () => (await caches.match('/de/')) !== undefined))
      .toBe(true);
    await cutOff();
    await page.goto(`${site.origin}/de/tools/tempo-seconds/?reps=6`);
    await expect.poll(() => page.getByRole('status').first().textContent()).toContain('42');
    expect(await page.locator('html').getAttribute('lang')).toBe('de');
  });

  it('an address without its last stroke leads on, and one that does not exist says so', async () => {
    const page = await visit('/');
    await cutOff();
    await page.goto(`${site.origin}/tools/tempo-seconds?reps=6`);
    expect(page.url()).toBe(`${site.origin}/tools/tempo-seconds/?reps=6`);
    const missing = await page.goto(`${site.origin}/tools/nothing-here/`);
    expect(missing?.status()).toBe(404);
    expect(await page.locator('main').getByRole('link', { name: 'Plan' }).count()).toBe(1);
  });

  it('the reference says that it is not here yet, and is once its pack has come', async () => {
    const page = await visit('/');
    await context.setOffline(true);
    const reference = `${site.origin}/developers/reference/load/functions/kg/`;
    const early = await page.goto(reference);
    expect(early?.status()).toBe(503);
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toMatch(
      /not on this device/i,
    );

    await context.setOffline(false);
    await page.goto(`${site.origin}/`);
    await page.evaluate(async () => {
      (await navigator.serviceWorker.ready).active?.postMessage('store-rest');
    });
    await expect
      .poll(
        () => page.evaluate(async (url) => (await caches.match(url)) !== undefined, reference),
        slow,
      )
      .toBe(true);
    await expect
      .poll(
        () =>
          page.evaluate(
            async () =>
              (await caches.match('/developers/schemas/tools/warm-up-ramp.json')) !== undefined,
          ),
        slow,
      )
      .toBe(true);
    await cutOff();
    await page.goto(reference);
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('kg()');
  });
});

describe('a newer version', () => {
  const folder = mkdtempSync(join(tmpdir(), 'windlass-newer-'));
  const newTitle = 'One question each, anew.';

  beforeAll(async () => {
    cpSync(dist, folder, { recursive: true });
    const tools = join(folder, 'tools', 'index.html');
    writeFileSync(tools, readFileSync(tools, 'utf8').replace('One question each.', newTitle));
    // A host that was changed over has the old files no more.
    rmSync(join(folder, 'assets', liveFile()));
    await writeWorker(folder, '/');
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** The part of a tool that is fetched in the middle of its use. */
  function liveFile(): string {
    const worker = readFileSync(join(dist, 'worker.js'), 'utf8');
    const name = /assets\/(past-failure-live\.[\w-]+\.js)/.exec(worker)?.[1];
    if (name === undefined) throw new Error('no file of the live set');
    return name;
  }

  async function changeOver(): Promise<void> {
    const port = Number(new URL(site.origin).port);
    site.stop();
    await expect
      .poll(() =>
        fetch(site.origin).then(
          () => 'there',
          () => 'gone',
        ),
      )
      .toBe('gone');
    site = await serveSite({ port, site: folder });
    expect(new URL(site.origin).port).toBe(String(port));
  }

  it('is offered, waits, and is taken by a press, while another page goes on as it was', async () => {
    const page = await visit('/tools/');
    const other = await context.newPage();
    await other.goto(`${site.origin}/tools/past-failure/`, { waitUntil: 'networkidle' });
    await changeOver();

    await page.reload();
    const offer = page.getByRole('button', { name: 'Use it now' });
    await offer.waitFor();
    expect(await page.locator('main').textContent()).not.toContain(newTitle);
    await page.reload();
    await offer.waitFor();
    expect(await page.locator('main').textContent()).not.toContain(newTitle);

    let reloads = 0;
    other.on('load', () => {
      reloads += 1;
    });
    await offer.click();
    await expect.poll(() => page.locator('main').textContent(), slow).toContain(newTitle);
    expect(await page.getByRole('button', { name: 'Use it now' }).count()).toBe(0);

    await other.getByRole('button', { name: 'Use it now' }).waitFor();
    expect(reloads).toBe(0);
    await other.getByRole('button', { name: 'Do this set now, step by step' }).click();
    await other.getByRole('dialog').waitFor();
    expect(await other.getByRole('dialog').textContent()).not.toContain('could not be');
  });

  it('can be put off until later', async () => {
    const page = await visit('/tools/');
    await changeOver();
    await page.reload();
    await page.getByRole('button', { name: 'Later' }).click();
    expect(await page.getByRole('button', { name: 'Use it now' }).count()).toBe(0);
    expect(await page.locator('main').textContent()).not.toContain(newTitle);
  });
});
