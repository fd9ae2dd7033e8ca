import axe from 'axe-core';
import type { Page } from 'playwright-core';

const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * What an accessibility check of a page finds, WCAG 2.2 AA and good practice: the rule and the
 * markup, shortened. `within` narrows it to a part of the page, `without` leaves one rule out.
 */
export async function violations(
  page: Page,
  { within = 'html', without = [] }: { within?: string; without?: readonly string[] } = {},
): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const found = await page.evaluate(
    async ({ place, runOnly, off }) => {
      const { axe: inPage } = globalThis as unknown as { axe: typeof axe };
      const rules = Object.fromEntries(off.map((rule) => [rule, { enabled: false }]));
      const { violations: broken } = await inPage.run(place, { runOnly, rules });
      return broken.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
    },
    { place: within, runOnly: standards, off: without },
  );
  return found.map((words) => words.slice(0, 500));
}
