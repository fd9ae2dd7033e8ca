import { writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import sirv from 'sirv';
import { openBrowser } from '../browser/openBrowser.ts';
import { importMap } from './importMap.ts';

/** What `page.js` of the consumer leaves behind when everything came. */
interface Met {
  readonly pound: number;
  readonly entries: number;
  readonly empty: readonly string[];
  readonly calculators: number;
  readonly results: number;
  readonly gym: boolean;
  readonly calendar: string;
}

/** Opens a page in a real browser that imports every entry by name, with no bundler in between. */
export async function meetInBrowser(consumer: string): Promise<void> {
  writeFileSync(
    join(consumer, 'page.html'),
    `<!doctype html><title>Consumer</title><script type="importmap">${importMap(consumer)}</script>` +
      '<windlass-calculator calculator="bar-loading" query="target=82.5kg"></windlass-calculator>' +
      '<script type="module" src="/page.js"></script>',
  );
  const server = createServer(sirv(consumer, { dev: true })).listen(0, '127.0.0.1');
  const browser = await openBrowser();
  try {
    const page = await browser.newPage();
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(String(error)));
    page.on('requestfailed', (request) => faults.push(`no ${request.url()}`));
    await page.goto(`http://localhost:${(server.address() as AddressInfo).port}/page.html`);
    await page
      .waitForFunction(() => 'met' in globalThis, null, { timeout: 20_000 })
      .catch(() => {
        throw new Error(`the page does not come up: ${faults.join('; ')}`);
      });
    const met = (await page.evaluate('globalThis.met')) as Met;
    const shown = await page
      .locator('windlass-calculator')
      .locator('output, [role=status]')
      .first()
      .textContent();
    const isWhole =
      met.pound === 0.45359237 &&
      met.empty.length === 0 &&
      met.results === met.calculators &&
      met.gym;
    if (!isWhole || !/82[.]5/.test(shown ?? '') || faults.length > 0) {
      throw new Error(`${JSON.stringify(met)}; shown: ${shown}; ${faults.join('; ')}`);
    }
  } finally {
    await browser.close();
    server.close();
  }
}
