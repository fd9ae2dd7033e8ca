import sparticuz from '@sparticuz/chromium';
import { type Browser, chromium } from 'playwright-core';

/**
 * A real browser: the one that comes inside an npm package on Linux x64, an installed Chrome elsewhere.
 *
 * Without the background switches Chromium looks for hosts of its own at every start.
 */
export async function openBrowser(): Promise<Browser> {
  const args = [
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--no-first-run',
  ];
  if (process.platform === 'linux' && process.arch === 'x64') {
    sparticuz.setGraphicsMode = false;
    return chromium.launch({
      executablePath: await sparticuz.executablePath(),
      args: ['--no-sandbox', '--font-render-hinting=none', ...args],
    });
  }
  try {
    return await chromium.launch({ channel: 'chrome', args });
  } catch (error) {
    throw new Error(
      'The browser journey needs Google Chrome installed on this system (on Linux x64 it brings its own).',
      { cause: error },
    );
  }
}
