// npm run screenshots: every page of the built site at 390 and 1280 px, light and dark, to look at.
import { mkdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openBrowser } from './openBrowser.ts';
import { serveSite } from './serveSite.ts';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const folder = join(root, '.cache', 'screenshots');
const [only = ''] = process.argv.slice(2);

mkdirSync(folder, { recursive: true });
const site = await serveSite();
const browser = await openBrowser();
const map = readFileSync(join(root, 'site', 'dist', 'sitemap-0.xml'), 'utf8');
const paths = [...map.matchAll(/<loc>[^<]*?:\/\/[^/<]+([^<]*)<\/loc>/g)].map(
  ([, path]) => path ?? '/',
);

for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of [390, 1280]) {
    const page = await browser.newPage({ colorScheme, viewport: { width, height: 844 } });
    for (const path of paths.filter((one) => one.includes(only))) {
      await page.goto(`${site.origin}${path}`, { waitUntil: 'networkidle' });
      const name = path.replaceAll('/', '-').replace(/^-|-$/g, '') || 'start';
      const file = join(folder, `${name}-${width}-${colorScheme}.png`);
      await page.screenshot({ path: file, fullPage: true });
      console.log(file);
    }
    await page.close();
  }
}
await browser.close();
site.stop();
