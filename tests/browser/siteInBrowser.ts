import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { openBrowser } from './openBrowser.ts';
import { serveSite } from './serveSite.ts';

/** The built site and a browser, there for all tests of a file. */
export interface SiteInBrowser {
  origin: string;
  browser: Browser;
}

/** Serves the site and opens a browser before the tests of a file, and ends both after them. */
export function siteInBrowser(): SiteInBrowser {
  const here = {} as SiteInBrowser;
  let stop = () => {};
  beforeAll(async () => {
    const [site, browser] = await Promise.all([serveSite(), openBrowser()]);
    stop = site.stop;
    Object.assign(here, { origin: site.origin, browser });
  });
  afterAll(async () => {
    await here.browser?.close();
    stop();
  });
  return here;
}
