// Usage: frames.ts. How long after a key each tool and the planner show it, on a slow processor.
import { calculators } from '@windlass/calculators';
import type { Page } from 'playwright-core';
import { openBrowser } from '../browser/openBrowser.ts';
import { serveSite } from '../browser/serveSite.ts';

/** A processor so many times slower than this one. */
const SLOWDOWN = 4;
/**
 * A frame comes every 17 ms and Event Timing counts in steps of 8 ms, so a key that is shown in the
 * next frame reads up to 24. Answers are worked out after that frame.
 */
const MOST_MS = 24;
/** A busy machine makes a page look slow and never fast: the quickest of these keys is the nearest. */
const KEYS = ['End', '1', 'Backspace', '2', 'Backspace', '1', 'Backspace', '2', 'Backspace'];
/** The first keys fetch what answers them. */
const FIRST_KEYS = 3;

const { origin, stop } = await serveSite();
const browser = await openBrowser();
const tools = calculators.map(({ id }) => `/tools/${id}/`);
for (const path of ['/plan/', ...tools]) {
  const page = await browser.newPage();
  await page.goto(`${origin}${path}`, { waitUntil: 'networkidle' });
  const ms = await msToFrame(page);
  console.log(`${path}: shown ${ms} ms after a key, at a processor ${SLOWDOWN} times slower`);
  if (ms > MOST_MS) process.exitCode = 1;
  await page.close();
}
await browser.close();
stop();

async function msToFrame(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
  const field = 'form input:not([type=radio], [type=checkbox], [type=file], [type=search])';
  await page.locator(field).filter({ visible: true }).first().focus();
  await page.evaluate(watchKeys);
  const durations: number[] = [];
  for (const key of KEYS) {
    await page.evaluate(() => {
      (globalThis as unknown as Watched).longest = 16;
    });
    await page.keyboard.press(key);
    // time for the frame and for the answer after it
    await page.waitForTimeout(700);
    durations.push(await page.evaluate(() => (globalThis as unknown as Watched).longest));
  }
  return Math.min(...durations.slice(FIRST_KEYS));
}

interface Watched {
  longest: number;
}

/** Runs in the page: the longest way from an event to the frame that shows it; 16 stands for less. */
function watchKeys(): void {
  const watched = globalThis as unknown as Watched;
  const observer = new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) {
      watched.longest = Math.max(watched.longest, duration);
    }
  });
  observer.observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
}
