import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveEmbedding } from '../../examples/embedding/serve.ts';
import { siteInBrowser } from './siteInBrowser.ts';
import { violations } from './violations.ts';

interface Told {
  readonly calculator: string;
  readonly kind: string;
  readonly exact?: number;
}

const here = siteInBrowser();
let origin = '';
let stop = () => {};

beforeAll(async () => {
  const served = await serveEmbedding();
  origin = served.origin;
  stop = () => void served.server.close();
});
afterAll(() => stop());

/** An example page, with everything that it asked for, told and complained about. */
async function open(name: string, options = {}) {
  const page = await here.browser.newPage(options);
  const asked: string[] = [];
  const faults: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('console', (message) => {
    if (message.type() !== 'log') faults.push(message.text());
  });
  page.on('pageerror', (error) => faults.push(String(error)));
  await page.addInitScript(() => {
    const told: unknown[] = [];
    Object.assign(globalThis, { told });
    document.addEventListener('windlass-result', (event) => {
      if (!(event instanceof CustomEvent)) return;
      const { calculator, kind, headline } = event.detail;
      told.push({ calculator, kind, exact: headline?.exact });
    });
    document.addEventListener('securitypolicyviolation', (event) =>
      console.error(`refused: ${event.violatedDirective} ${event.blockedURI}`),
    );
  });
  await page.goto(`${origin}/${name}.html`, { waitUntil: 'networkidle' });
  return { page, asked, faults };
}

const toldIn = (page: Page) =>
  page.evaluate(() => (globalThis as unknown as { told: Told[] }).told);

describe('a page without a framework', () => {
  it('shows two calculators, each file fetched once and from the page’s own server', async () => {
    const { page, asked, faults } = await open('plain');
    // (20 kg bar + 2 × (20 + 1.25 kg)) and 8 × (4 + 1 + 2 + 0 s), by hand.
    await expect.poll(async () => (await toldIn(page)).length).toBe(2);
    expect(await toldIn(page)).toEqual(
      expect.arrayContaining([
        { calculator: 'bar-loading', kind: 'result', exact: 62.5 },
        { calculator: 'tempo-seconds', kind: 'result', exact: 56 },
      ]),
    );
    const board = await page.locator('#board').textContent();
    expect(board).toMatch(/62[.]5 kg.*56 s/);
    const own = asked.filter((url) => !url.startsWith('data:'));
    expect(own.filter((url) => !url.startsWith(origin))).toEqual([]);
    expect(own).toEqual([...new Set(own)]);
    const calculators = own.flatMap(
      (url) => /windlass\/([a-z-]+?)(-rest)?-[A-Z0-9]{8}/.exec(url)?.[1] ?? [],
    );
    expect(new Set(calculators.filter((name) => !['chunk', 'more'].includes(name)))).toEqual(
      new Set(['bar-loading', 'tempo-seconds']),
    );
    expect(faults).toEqual([]);
    expect(await violations(page)).toEqual([]);
    await page.close();
  });

  it('is answered from the keyboard, and keeps a wrong value beside the last answer', async () => {
    const { page } = await open('plain');
    const bar = page.locator('windlass-calculator').first();
    const load = bar.getByRole('textbox', { name: 'Load wanted' });
    await load.press('ControlOrMeta+a');
    await page.keyboard.type('82,5');
    await expect
      .poll(async () => (await toldIn(page)).at(-1))
      .toEqual({
        calculator: 'bar-loading',
        kind: 'result',
        exact: 82.5,
      });
    await load.press('ControlOrMeta+a');
    await page.keyboard.type('heavy');
    await expect.poll(async () => (await toldIn(page)).at(-1)?.kind).toBe('unreadable');
    expect(await bar.getByRole('status').first().textContent()).toContain('82.5');
    await page.close();
  });

  it('keeps its type from a calculator, and the calculator’s from the page', async () => {
    const { page } = await open('plain');
    const measure = () =>
      page.evaluate(() => {
        const styleOf = (element: Element | null | undefined) => {
          if (!element) throw new Error('not there');
          const { fontFamily, fontSize, textTransform, borderTopStyle } = getComputedStyle(element);
          return { fontFamily, fontSize, textTransform, borderTopStyle };
        };
        const inside = document.querySelector('windlass-calculator')?.shadowRoot;
        return {
          input: styleOf(inside?.querySelector('input')),
          text: styleOf(inside?.querySelector('.wl')),
          heading: styleOf(document.querySelector('h1')),
        };
      });
    const { input, text, heading } = await measure();
    expect(input).toMatchObject({ textTransform: 'none' });
    expect(input.borderTopStyle).not.toBe('dotted');
    // 1.0625 of the 16 px that the browser has, not of the 10 px of the page.
    expect(text.fontSize).toBe('17px');
    expect(text.fontFamily).not.toContain('Georgia');
    expect(heading.fontFamily).toContain('Georgia');
    await page.close();
  });

  it('follows the theme of the page', async () => {
    const ground = async (colorScheme: 'light' | 'dark') => {
      const { page } = await open('plain', { colorScheme });
      const colour = await page.evaluate(() => {
        const inside = document
          .querySelector('windlass-calculator')
          ?.shadowRoot?.querySelector('.wl');
        return inside ? getComputedStyle(inside).backgroundColor : '';
      });
      expect(await violations(page)).toEqual([]);
      await page.close();
      return colour;
    };
    expect(await ground('light')).toBe('rgb(247, 245, 239)');
    expect(await ground('dark')).toBe('rgb(20, 24, 26)');
  });
});

describe('a calculator on a narrow page', () => {
  it('cuts no word off and makes nothing wider than the page', async () => {
    for (const name of ['plain', 'strict-policy']) {
      const { page } = await open(name, { viewport: { width: 360, height: 800 } });
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll('windlass-calculator')].flatMap(({ shadowRoot }) =>
          [...(shadowRoot?.querySelectorAll('.wl-segment > span') ?? [])]
            .filter((word) => word.scrollWidth > word.clientWidth)
            .map(({ textContent }) => textContent),
        ),
      );
      expect(cut).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
      await page.close();
    }
  });
});

describe('a page with a strict policy', () => {
  it('shows a calculator that follows its attributes, and nothing is refused', async () => {
    const { page, asked, faults } = await open('strict-policy');
    await expect.poll(async () => (await toldIn(page)).length).toBe(1);
    const answer = page.locator('windlass-calculator').getByRole('status').first();
    expect(await page.locator('#board').textContent()).toContain('kg');
    const before = await answer.textContent();
    await page.getByRole('button', { name: 'Helm, 185 lb' }).press('Enter');
    await expect.poll(() => page.locator('#board').textContent()).toContain('lb');
    expect(await answer.textContent()).not.toBe(before);
    expect(await toldIn(page)).toHaveLength(2);
    const work = page.locator('windlass-calculator').getByRole('textbox').first();
    expect(await work.inputValue()).toBe('185');
    expect(asked.filter((url) => !url.startsWith(origin))).toEqual([]);
    expect(faults).toEqual([]);
    await page.close();
  });

  it('is accessible', async () => {
    const { page } = await open('strict-policy', { bypassCSP: true });
    expect(await violations(page)).toEqual([]);
    await page.close();
  });
});
