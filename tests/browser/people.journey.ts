import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { siteInBrowser } from './siteInBrowser.ts';
import { violations } from './violations.ts';

const dist = join(dirname(dirname(dirname(fileURLToPath(import.meta.url)))), 'site', 'dist');
const here = siteInBrowser();

const wide = { width: 1280, height: 900 };
const phone = { width: 390, height: 844 };

type Options = NonNullable<Parameters<Browser['newContext']>[0]>;

/** A browser of its own, in which nothing is kept yet. */
function freshBrowser(options: Options = {}): Promise<BrowserContext> {
  return here.browser.newContext({ viewport: wide, ...options });
}

/** The page of people and gyms, once it knows what is kept. */
async function people(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${here.origin}/people/`, { waitUntil: 'networkidle' });
  await page.locator('.part').first().waitFor();
  return page;
}

const names = (page: Page) => page.locator('.entry h3').allTextContents();
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

/** The boathouse crew, with the page that shows them. */
async function crew(context: BrowserContext): Promise<Page> {
  const page = await people(context);
  await button(page, 'Add the boathouse crew').click();
  await expect.poll(() => names(page)).toEqual([...crewNames, 'Boathouse']);
  return page;
}
const crewNames = ['Helm', 'New crew member', 'Winch hand'];

/** Presses a button and gives back the text of the file that it saves. */
async function savedBy(page: Page, name: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    button(page, name).first().click(),
  ]);
  return readFileSync(await download.path(), 'utf8');
}

async function open(page: Page, label: string, name: string, text: string): Promise<void> {
  const file = { name, mimeType: 'text/plain', buffer: Buffer.from(text) };
  await page.setInputFiles(`input[aria-label="${label}"]`, file);
}

describe('people and gyms', () => {
  it('are kept over a reload, renamed, deleted and brought back', async () => {
    const context = await freshBrowser();
    const page = await people(context);
    await page.getByLabel('Name of a new person').fill('Lookout');
    await page.getByLabel('Name of a new person').press('Enter');
    await page.getByLabel('Name of a new gym').fill('Shed');
    await page.getByLabel('Name of a new gym').press('Enter');
    await expect.poll(() => names(page)).toEqual(['Lookout', 'Shed']);
    await page.reload({ waitUntil: 'networkidle' });
    await expect.poll(() => names(page)).toEqual(['Lookout', 'Shed']);
    await button(page, 'Details of Lookout').click();
    await page.getByLabel('Usual gym').selectOption({ label: 'Shed' });
    await page.locator('.entry-brief', { hasText: 'trains at Shed' }).waitFor();
    await page.getByLabel('Name', { exact: true }).fill('Mate');
    await page.getByLabel('Name', { exact: true }).press('Enter');
    await expect.poll(() => names(page)).toEqual(['Mate', 'Shed']);
    await button(page, 'Delete person and log').click();
    await expect.poll(() => names(page)).toEqual(['Shed']);
    const undo = button(page, 'Undo');
    await expect.poll(() => undo.evaluate((one) => one === document.activeElement)).toBe(true);
    await undo.press('Enter');
    await expect.poll(() => names(page)).toEqual(['Mate', 'Shed']);
    await context.close();
  });

  it('keep what was typed where it cannot be a name, and say what would be right', async () => {
    const context = await freshBrowser();
    const page = await people(context);
    const field = page.getByLabel('Name of a new person');
    await field.fill('a'.repeat(81));
    await field.press('Enter');
    await page.getByText('Give a name of 1 to 80 characters.').waitFor();
    expect(await field.inputValue()).toHaveLength(81);
    expect(await names(page)).toEqual([]);
    await context.close();
  });

  it('follow what another tab does, and never overwrite it', async () => {
    const context = await freshBrowser();
    const [one, other] = [await crew(context), await people(context)];
    await button(one, 'Details of Helm').click();
    await button(other, 'Details of Helm').click();
    await one.getByLabel('Name', { exact: true }).fill('Coxswain');
    await one.getByLabel('Name', { exact: true }).press('Enter');
    await expect.poll(() => names(other)).toContain('Coxswain');
    await other.evaluate(() => {
      // A tab that hears nothing, as one that the browser has put to sleep.
      BroadcastChannel.prototype.postMessage = () => {};
    });
    await other.getByLabel('Usual gym').selectOption('');
    await other.getByText('The usual gym of Coxswain is kept.').waitFor();
    await one.getByLabel('Name', { exact: true }).fill('Skipper');
    await one.getByLabel('Name', { exact: true }).press('Enter');
    await one.getByText(/changed in another tab/).waitFor();
    expect(await one.getByLabel('Name', { exact: true }).inputValue()).toBe('Skipper');
    await one.reload({ waitUntil: 'networkidle' });
    await expect.poll(() => names(one)).toContain('Coxswain');
    await context.close();
  });
});

describe('a backup', () => {
  it('brings everything back as it was after all is erased', async () => {
    const context = await freshBrowser();
    const page = await crew(context);
    const before = await savedBy(page, 'Save a backup');
    await page.evaluate(() => localStorage.setItem('windlass.unit', 'lb'));
    await button(page, 'Erase everything').click();
    await page.getByText(/3 people, 1 gym, 5 sessions done, and the unit/).waitFor();
    await button(page, 'Erase all of it').click();
    await page.getByText('Everything is erased.').waitFor();
    expect(await names(page)).toEqual([]);
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
    await open(page, 'Restore from a file', 'backup.json', before);
    await page.getByText('9 records would be written.').waitFor();
    expect(await names(page)).toEqual([]);
    await button(page, 'Write 9 records').click();
    await expect.poll(() => names(page)).toEqual([...crewNames, 'Boathouse']);
    const after = await savedBy(page, 'Save a backup');
    const { writtenAt: _, ...was } = JSON.parse(before);
    const { writtenAt: __, ...is } = JSON.parse(after);
    expect(is).toEqual(was);
    await context.close();
  });

  it('shows what it would change, and keeps what is here where that is wanted', async () => {
    const context = await freshBrowser();
    const page = await crew(context);
    const file = JSON.parse(await savedBy(page, 'Save a backup'));
    await button(page, 'Details of Helm').click();
    await page.getByLabel('Name', { exact: true }).fill('Coxswain');
    await page.getByLabel('Name', { exact: true }).press('Enter');
    await page.getByText('Coxswain is the name now.').waitFor();
    const ofFile = (name: string) =>
      file.clients.find((one: { client: { name: string } }) => one.client.name === name);
    Object.assign(ofFile('Helm'), {
      revision: 'elsewhere',
      client: { ...ofFile('Helm').client, name: 'Skipper' },
    });
    const winch = ofFile('Winch hand');
    Object.assign(winch, { past: [winch.revision], revision: 'later' });
    winch.client.bodyWeight = '79 kg';
    file.gyms.push({ id: 'broken' });
    await open(page, 'Restore from a file', 'backup.json', JSON.stringify(file));
    await page.getByText('Changed both here and in the file').waitFor();
    await page.getByText('The file has a later state of these').waitFor();
    await page.getByText('The same here and in the file').waitFor();
    await page.getByText(/Gym 2 of the file/).waitFor();
    expect(await violations(page)).toEqual([]);
    await button(page, 'Write 1 record').click();
    await page.getByText('79 kg').waitFor();
    expect(await names(page)).toContain('Coxswain');
    await open(page, 'Restore from a file', 'backup.json', JSON.stringify(file));
    await page.getByLabel("Take the file's").first().check();
    await button(page, 'Write 1 record').click();
    await expect.poll(() => names(page)).toContain('Skipper');
    await context.close();
  });

  it.each([
    ['{"format":"windlass-backup","version":1,"clients":[', 'Give a whole backup file'],
    ['{"format":"windlass-backup","version":9}', 'written by a newer Windlass'],
    ['name,load\nHelm,5', 'Give a whole backup file'],
  ])('that is none is answered with a sentence: %s', async (text, answer) => {
    const context = await freshBrowser();
    const page = await crew(context);
    await open(page, 'Restore from a file', 'backup.json', text);
    await page.getByText(answer).waitFor();
    expect(await page.locator('.restore [role=alert]').textContent()).toContain(
      'Nothing was changed.',
    );
    expect(await names(page)).toEqual([...crewNames, 'Boathouse']);
    await context.close();
  });
});

describe('a log', () => {
  it('goes out as CSV and comes back into another person', async () => {
    const context = await freshBrowser();
    const page = await crew(context);
    await button(page, 'Details of Helm').click();
    const csv = await savedBy(page, 'Save log as CSV');
    expect(csv.split('\r\n')).toHaveLength(7);
    await open(page, 'Bring in sets from a file', 'helm.csv', csv);
    await page.getByText('5 sets are in the log already and are left out.').waitFor();
    await button(page, 'Details of Helm').click();
    await button(page, 'Details of New crew member').click();
    await open(page, 'Bring in sets from a file', 'helm.csv', csv);
    await button(page, 'Bring in 5 sets').click();
    await page.getByText('5 sets are in the log of New crew member now.').waitFor();
    await page
      .locator('.entry', { hasText: 'New crew member' })
      .getByText('last 12 March 2027')
      .waitFor();
    await context.close();
  });

  it('takes a table of somebody else’s making and shows every row that it could not read', async () => {
    const context = await freshBrowser();
    const page = await crew(context);
    await button(page, 'Details of New crew member').click();
    const table =
      'Tag;Was;Last;Wdh\n02.03.2027;Leg press;60;12\n04.03.2027;Rudern;20,5;10\n05.03.2027;Rudern;schwer;4\n31.02.2027;Rudern;20;4\n';
    await open(page, 'Bring in sets from a file', 'tabelle.csv', table);
    await page.getByText('Say which column holds: Day, Load.').waitFor();
    await page.getByLabel('Tag', { exact: true }).selectOption({ label: 'Day' });
    await page.getByLabel('Last', { exact: true }).selectOption({ label: 'Load' });
    await page.getByLabel('Days are written').selectOption('day-first');
    await page.getByText('2 sets of 2 days can be brought in.').waitFor();
    const rows = page.locator('.unread li');
    expect(await rows.allTextContents()).toHaveLength(2);
    expect(await rows.first().textContent()).toContain('Line 4');
    expect(await rows.last().textContent()).toContain('31.02.2027;Rudern;20;4');
    await page.getByLabel('Exercise of Rudern').selectOption({ label: 'One-arm dumbbell row' });
    expect(await page.getByLabel('Equipment of Rudern').inputValue()).toBe('dumbbells');
    expect(await violations(page)).toEqual([]);
    await button(page, 'Bring in 2 sets').click();
    await page.getByText('2 sets are in the log of New crew member now.').waitFor();
    await page.getByText('Thursday 4 March 2027: 1 set').click();
    await page.getByText('20.5 kg').waitFor();
    await button(page, /^Delete this session: Thursday 4 March/).click();
    await button(page, 'Undo').click();
    await page.getByText('Thursday 4 March 2027: 1 set').waitFor();
    await context.close();
  });
});

/** The planner, opened from the page of people. */
async function planFor(page: Page, name: string): Promise<Page> {
  await page.getByRole('link', { name }).click();
  await page.waitForURL(/\/plan\//);
  await page.locator('html:not(.opening)').waitFor();
  return page;
}

const kept = (page: Page) => page.getByLabel('Kept person').locator('option:checked');
const loads = (page: Page) => page.locator('.load-value').allTextContents();

describe('a kept person in the planner', () => {
  it('is made, planned for, changed and still there after a reload', async () => {
    const context = await freshBrowser();
    const page = await people(context);
    await page.getByLabel('Name of a new gym').fill('Shed');
    await page.getByLabel('Name of a new gym').press('Enter');
    await page.getByLabel('Name of a new person').fill('Lookout');
    await page.getByLabel('Name of a new person').press('Enter');
    await page.getByText('Lookout is kept in this browser.').waitFor();
    await planFor(page, 'Plan a session for Lookout');
    await expect.poll(() => page.locator('.sheet-name').textContent()).toBe('Lookout');
    expect(new URL(page.url()).search).toBe('');
    await expect.poll(() => kept(page).textContent()).toBe('Lookout');
    const before = page.url();
    await page.locator('#ask-client-bodyWeight').fill('71,5');
    await expect.poll(() => page.url()).not.toBe(before);
    await button(page, 'Save changes').click();
    await page.getByText('Lookout is kept in this browser.').waitFor();
    expect(await button(page, 'Kept').first().isDisabled()).toBe(true);
    await page.reload({ waitUntil: 'networkidle' });
    await expect.poll(() => page.locator('.sheet-name').textContent()).toBe('Lookout');
    expect(await page.locator('#ask-client-bodyWeight').inputValue()).toBe('71,5');
    await expect.poll(() => kept(page).textContent()).toBe('Lookout');
    const other = await people(context);
    await other.getByText('71.5 kg').waitFor();
    await context.close();
  });

  it('brings what the log tells of their strength', async () => {
    const context = await freshBrowser();
    const page = await crew(context);
    await planFor(page, 'Plan a session for Winch hand');
    await expect.poll(() => page.locator('.sheet-name').textContent()).toBe('Winch hand');
    // The log holds the same sets as the example of the pull day, so the plan is the same.
    const example = await context.newPage();
    await example.goto(`${here.origin}/plan/#pull-day`, { waitUntil: 'networkidle' });
    await page.fill('#ask-intent-date', '2027-03-15');
    await expect.poll(() => loads(page)).toEqual(await loads(example));
    await context.close();
  });

  it('is kept from the example, and follows what another tab makes of it', async () => {
    const context = await freshBrowser();
    const page = await context.newPage();
    await page.goto(`${here.origin}/plan/`, { waitUntil: 'networkidle' });
    await button(page, 'Keep gym').click();
    await button(page, 'Keep person').click();
    await page.getByText('Winch hand is kept in this browser.').waitFor();
    const other = await people(context);
    await expect.poll(() => names(other)).toEqual(['Winch hand', 'Boathouse']);
    await button(other, 'Details of Winch hand').click();
    await other.getByLabel('Name', { exact: true }).fill('Deckhand');
    await other.getByLabel('Name', { exact: true }).press('Enter');
    await other.getByText('Deckhand is the name now.').waitFor();
    await page
      .getByLabel('Kept person')
      .locator('option', { hasText: 'Deckhand' })
      .waitFor({ state: 'attached' });
    await button(page, 'Save changes').waitFor();
    expect(await page.inputValue('#ask-client-name')).toBe('Winch hand');
    expect(await violations(page)).toEqual([]);
    await context.close();
  });

  it('that is not in this browser is said, and an example is there', async () => {
    const context = await freshBrowser();
    const page = await context.newPage();
    await page.goto(`${here.origin}/plan/?person=nobody`, { waitUntil: 'networkidle' });
    await page.getByText('not kept in this browser').waitFor();
    await page.locator('html:not(.opening)').waitFor();
    expect(await page.locator('.sheet-name').textContent()).toBe('Winch hand');
    await context.close();
  });

  it('cannot be kept where the browser keeps nothing, and the plan goes on', async () => {
    const context = await freshBrowser();
    await context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('denied', 'SecurityError');
      };
    });
    const page = await context.newPage();
    await page.goto(`${here.origin}/plan/`, { waitUntil: 'networkidle' });
    await page
      .getByText(/lets the page keep nothing/)
      .first()
      .waitFor();
    const before = await loads(page);
    await page.fill('#ask-intent-lifts-0-window-minReps', '5');
    await expect.poll(() => loads(page)).not.toEqual(before);
    await context.close();
  });
});

describe('a browser that does not do as asked', () => {
  it.each([
    ['throws', "throw new DOMException('denied', 'SecurityError')", /lets the page keep nothing/],
    ['is full', "throw new DOMException('full', 'QuotaExceededError')", /no room left/],
  ])('is told of when it %s, and asked again', async (_, body, answer) => {
    const context = await freshBrowser();
    await context.addInitScript(`
      const open = indexedDB.open.bind(indexedDB);
      let isDenied = true;
      IDBFactory.prototype.open = (...asked) => { if (isDenied) { ${body} } return open(...asked); };
      addEventListener('allow', () => { isDenied = false; });
    `);
    const page = await context.newPage();
    await page.goto(`${here.origin}/people/`, { waitUntil: 'networkidle' });
    await page.getByText(answer).waitFor();
    expect(await violations(page)).toEqual([]);
    await page.evaluate(() => dispatchEvent(new Event('allow')));
    await button(page, 'Try again').click();
    await page.getByLabel('Name of a new person').waitFor();
    await context.close();
  });

  it('keeps the name typed when it has no room for it', async () => {
    const context = await freshBrowser();
    const page = await people(context);
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await page.getByLabel('Name of a new person').fill('Lookout');
    await button(page, 'Add').first().click();
    await page.getByText(/no room left/).waitFor();
    expect(await page.getByLabel('Name of a new person').inputValue()).toBe('Lookout');
    await context.close();
  });

  it('leaves the data of a newer page alone', async () => {
    const context = await freshBrowser();
    const page = await crew(context);
    await page.evaluate(
      () =>
        new Promise((resolve) => {
          indexedDB.open('windlass', 99).onsuccess = resolve;
        }),
    );
    await page.getByText(/a newer Windlass is open/).waitFor();
    await page.reload({ waitUntil: 'networkidle' });
    await page.getByText(/written by a newer Windlass/).waitFor();
    await context.close();
  });

  it('sets aside a record that is damaged, and shows the others', async () => {
    const context = await freshBrowser();
    const page = await crew(context);
    await page.evaluate(
      () =>
        new Promise((resolve) => {
          indexedDB.open('windlass').onsuccess = ({ target }) => {
            const database = (target as IDBOpenDBRequest).result;
            const change = database.transaction('clients', 'readwrite');
            change.objectStore('clients').put({ id: 'damaged', client: { name: 'Half a person' } });
            change.oncomplete = resolve;
          };
        }),
    );
    await page.reload({ waitUntil: 'networkidle' });
    await page.getByText('One record cannot be read.').waitFor();
    expect(await names(page)).toEqual(['A person', ...crewNames, 'Boathouse']);
    expect(await savedBy(page, 'Save as a file')).toContain('Half a person');
    await button(page, /^Delete for good/).click();
    await expect.poll(() => names(page)).toEqual([...crewNames, 'Boathouse']);
    await context.close();
  });

  it('says what the page does and needs where scripts are off', async () => {
    const context = await freshBrowser({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(`${here.origin}/people/`);
    expect(await page.locator('main').textContent()).toContain('needs JavaScript');
    expect(await page.locator('.people').isVisible()).toBe(false);
    await context.close();
  });
});

describe('the page', () => {
  it.each([wide, phone])('is accessible, $width wide, empty and full', async (viewport) => {
    const context = await freshBrowser({ viewport });
    const empty = await people(context);
    expect(await violations(empty)).toEqual([]);
    const page = await crew(context);
    await button(page, 'Details of Helm').click();
    await page.getByText('Friday 12 March 2027').click();
    await button(page, 'Details of Boathouse').click();
    await button(page, 'Erase everything').click();
    expect(await violations(page)).toEqual([]);
    const isWider = await page.evaluate(
      () => document.documentElement.scrollWidth > document.documentElement.clientWidth,
    );
    expect(isWider).toBe(false);
    await context.close();
  });

  it('runs at first with at most 45 kB of script, compressed', () => {
    const html = readFileSync(join(dist, 'people', 'index.html'), 'utf8');
    const scripts = new Set(
      [...html.matchAll(/<script[^>]*src="\/(assets\/[^"]+)"/g)].map(([, file]) => file ?? ''),
    );
    expect(scripts.size).toBeGreaterThan(0);
    for (const script of scripts) {
      const code = readFileSync(join(dist, script), 'utf8');
      for (const [, file] of code.matchAll(/\b(?:from|import)\s*"\.\/([^"]+)"/g))
        scripts.add(`assets/${file}`);
    }
    const sizes = [...scripts].map((file) => gzipSync(readFileSync(join(dist, file))).length);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(45_000);
  });
});
