import { readFileSync } from 'node:fs';
import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import gym from '../../examples/boathouse/gym.json' with { type: 'json' };
import pastFailureDay from '../../examples/boathouse/past-failure-day.json' with { type: 'json' };
import { openFloor, phone, press, shown, warmUp } from './onTheFloor.ts';
import { siteInBrowser } from './siteInBrowser.ts';
import { violations } from './violations.ts';

const here = siteInBrowser();
const floor = (fragment = '', context?: BrowserContext) => openFloor(here, fragment, context);

const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent);

/** Ends the tab as a crash would, once what happened has reached the browser's database. */
async function kill(page: Page): Promise<void> {
  await page.locator('.floor[data-written=true]').waitFor();
  await page.close({ runBeforeUnload: false });
}

/** Takes so many of the events that were written last out of the browser's database. */
async function loseLastEvents(count: number): Promise<void> {
  const done = <Result>(request: IDBRequest<Result>) =>
    new Promise<Result>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const [found] = await indexedDB.databases();
  const database = await done(indexedDB.open(found?.name ?? ''));
  const events = database.transaction('events', 'readwrite').objectStore('events');
  const keys = await done(events.getAllKeys());
  for (const key of keys.slice(-count)) await done(events.delete(key));
  database.close();
}

/** Begins the first work set and waits until so much of it is counted. */
async function countUntil(page: Page, done: string): Promise<void> {
  await warmUp(page);
  await press(page, 'Start the set');
  await expect.poll(() => shown(page, '.floor-done-reps'), { timeout: 30_000 }).toContain(done);
}

/** Counts a set by hand and tells that it failed. */
async function setByHand(page: Page, reps: number): Promise<void> {
  await press(page, 'Start the set');
  for (let rep = 0; rep < reps; rep++) await press(page, '+1: one rep more');
  await expect.poll(() => shown(page, '.floor-done-reps')).toContain(`${reps} reps done`);
  await page.getByRole('button', { name: /^Not finished/ }).click();
}

describe('a session on the floor', () => {
  it('comes from the planner with the plan as it is there', async () => {
    const page = await here.browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto(`${here.origin}/plan/#leg-day`, { waitUntil: 'networkidle' });
    await page.locator('html:not(.opening)').waitFor();
    await page.fill('#ask-client-name', 'Lookout');
    await expect.poll(() => page.url()).toContain('#1.');
    const load = await shown(page, '.load-value');
    await page.getByRole('link', { name: 'Run it on the floor' }).click();
    await expect.poll(() => page.url()).toMatch(/\/floor\/#1\./);
    await page.locator('html:not(.opening) .floor').waitFor();
    await expect.poll(() => shown(page, 'h1')).toContain('Lookout');
    const listed = await page.locator('.floor-list-lift').first().textContent();
    expect(listed).toContain(`${load}\u00a0kg`);
    await page.close();
  });

  it('goes on at the same repetition and the same rest after the tab was killed, to the log and the next load', async () => {
    const context = await here.browser.newContext({ viewport: phone });
    let page = await floor('', context);
    await countUntil(page, '2 reps done');
    await kill(page);

    page = await floor('', context);
    // Reps of 5 s go on by the clock while the tab is away.
    await expect.poll(() => shown(page, '.dial-unit')).toBe('rep');
    expect(Number(await shown(page, '.dial-figure'))).toBeGreaterThanOrEqual(3);
    expect(Number(await shown(page, '.dial-figure'))).toBeLessThanOrEqual(5);
    await page.getByRole('button', { name: /^Stop/ }).click();
    const reps = Number((await shown(page, '.floor-put .floor-number'))?.split(' ')[0]);
    for (let rep = reps; rep < 9; rep++) await press(page, '+1: one rep more');
    await press(page, '1');
    await expect.poll(() => shown(page, '.floor-last')).toContain('9 reps, 1 left, as expected');
    const rest = secondsOf(await shown(page, '.floor-rest-clock'));
    await kill(page);

    page = await floor('', context);
    await expect.poll(() => shown(page, '.floor-last')).toContain('9 reps, 1 left');
    const left = secondsOf(await shown(page, '.floor-rest-clock'));
    expect(left).toBeLessThanOrEqual(rest);
    expect(left).toBeGreaterThan(rest - 30);
    await setByHand(page, 8);
    await press(page, 'More');
    await press(page, 'End the session here');
    await expect.poll(() => shown(page, '.over-next .floor-number')).toMatch(/^55\.4 kg aim at 9/);
    expect(await shown(page, '.over-table tbody tr:nth-child(2)')).toContain('8 reps, then failed');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      press(page, 'Save as CSV'),
    ]);
    expect(download.suggestedFilename()).toBe('winch-hand-2027-03-15.csv');
    const csv = readFileSync(await download.path(), 'utf8').split('\r\n');
    expect(csv[1]).toMatch(
      /^2027-03-15,barbell-bent-over-row,1,,55\.4,kg,total,,78 kg,9,reserve,1,3-0-2-0,,/,
    );
    expect(csv[2]).toMatch(/,55\.4,kg,total,,78 kg,8,failure,,3-0-2-0,\d+,/);
    await press(page, 'Into the log of Winch hand');
    await expect.poll(() => shown(page, '.floor-actions')).toContain('In the log of Winch hand');
    await page.close();

    page = await floor('', context);
    await expect.poll(() => shown(page, '.floor-place')).toContain('warm-up 1 of 3');
    await context.close();
  });

  it('stands at the last repetition when the page was away for long', async () => {
    const context = await here.browser.newContext({ viewport: phone });
    let page = await floor('', context);
    await countUntil(page, '1 rep done');
    await kill(page);
    await context.clock.install({ time: Date.now() + 20 * 60_000 });
    page = await floor('', context);
    await expect
      .poll(() => shown(page, '[role=alert]'))
      .toContain('The page was closed in this set');
    expect(await shown(page, '.floor-done-reps')).toContain('1 rep done');
    expect(await shown(page, '.floor-phase')).toBe('The count stands still');
    await context.close();
  });

  it('is run from the keyboard alone', async () => {
    const page = await floor();
    await page.getByRole('button', { name: 'Done', exact: true }).focus();
    for (const next of ['Done', 'Done', 'Start the set']) {
      await page.keyboard.press('Enter');
      await expect.poll(() => focused(page)).toBe(next);
      await page.waitForTimeout(50);
    }
    await page.keyboard.press('Enter');
    await expect.poll(() => focused(page)).toBe('Stopload is down');
    await page.keyboard.press('Space');
    await expect.poll(() => focused(page)).toBe('How many more were there?');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect.poll(() => focused(page)).toBe('Start the set');
    expect(await shown(page, '.floor-last')).toContain('0 reps, 1 left');
    await page.context().close();
  });

  it('takes back what was said, up to the beginning', async () => {
    const page = await floor();
    await warmUp(page);
    await setByHand(page, 9);
    await press(page, 'Take back');
    await expect.poll(() => shown(page, '.floor-done-reps')).toContain('9 reps done');
    const place = page.locator('.floor-place');
    while (!(await place.isVisible()) || !(await place.textContent())?.includes('warm-up 1 of 3')) {
      await press(page, 'Take back');
    }
    expect(await page.getByRole('button', { name: 'Take back' }).isDisabled()).toBe(true);
    await page.context().close();
  });

  it('ends a set with a sign, says what to do, and leaves the rest of the lift out', async () => {
    const page = await floor();
    await warmUp(page);
    await press(page, 'Start the set');
    await page.getByRole('button', { name: /A sign to stop/ }).click();
    await page.waitForSelector('dialog[open]');
    expect(await shown(page, '#floor-dialog-title')).toContain('The set is stopped');
    await press(page, 'A pop, or a sudden loss of strength');
    await expect
      .poll(() => shown(page, '.told-sign'))
      .toContain('Nothing more for that joint today');
    expect(await shown(page, '.floor-place')).toContain('Lift 2 of 3');
    await page.context().close();
  });

  it('is followed in one tab at a time', async () => {
    const context = await here.browser.newContext({ viewport: phone });
    const one = await floor('', context);
    await press(one, 'Done');
    const two = await floor('', context);
    await expect.poll(() => shown(two, '.floor-set h2')).toBe('Running in another tab');
    await press(two, 'Follow it here instead');
    await expect.poll(() => shown(two, '.floor-place')).toContain('warm-up 2 of 3');
    await expect.poll(() => shown(one, '.floor-set h2')).toBe('Running in another tab');
    await context.close();
  });

  it('that has not been ended is not overwritten by another plan', async () => {
    const context = await here.browser.newContext({ viewport: phone });
    const page = await floor('', context);
    await press(page, 'Done');
    await expect.poll(() => shown(page, '.floor-place')).toContain('warm-up 2 of 3');
    await page.waitForTimeout(500);
    await page.close();
    const other = await floor('#leg-day', context);
    await expect.poll(() => shown(other, '.floor-set h2')).toBe('A session is under way');
    await press(other, 'Go on with it');
    await expect.poll(() => shown(other, '.floor-place')).toContain('warm-up 2 of 3');
    await other.close();
    const again = await floor('#leg-day', context);
    await press(again, 'End it, and begin this one');
    await expect.poll(() => shown(again, 'h1')).toContain('Helm');
    await context.close();
  });

  it('goes on past failure where that is allowed, and says what it gave', async () => {
    const page = await floor();
    await page.getByRole('button', { name: /Go to Cable pulldown.* set 1 of 2/ }).click();
    await press(page, 'More');
    await press(page, 'Go on past failure');
    await page.getByRole('button', { name: /^Hold .*, 10 s at most$/ }).click();
    await setByHand(page, 8);
    await press(page, 'Hold begins');
    await page.waitForTimeout(1500);
    expect(await page.getByRole('button', { name: 'Stop for a sign' }).isVisible()).toBe(true);
    await press(page, 'Hold is over');
    await expect.poll(() => shown(page, '.floor-last')).toMatch(/8 reps, then failed, Hold [1-9]/);
    await page.context().close();
  });

  it('goes on past failure as planned, by key, through a reload in the hold, into the log', async () => {
    const context = await here.browser.newContext({ viewport: phone });
    const planner = await context.newPage();
    await planner.goto(`${here.origin}/plan/`, { waitUntil: 'networkidle' });
    await planner.setInputFiles('input[type=file]', {
      name: 'plan.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ ...pastFailureDay, gym })),
    });
    await planner.locator('.lift h2', { hasText: 'Chin-up' }).waitFor();
    await expect.poll(() => planner.url()).toContain('#1.');
    const link = new URL(planner.url()).hash;
    await planner.close();

    let page = await floor(link, context);
    await expect.poll(() => shown(page, 'h1')).toContain('Mechanic');
    await press(page, 'Done');
    await expect
      .poll(() => shown(page, '.floor-chain p'))
      .toBe('Then hold contracted, 20 s at most, lower 3 times at most, 5 s each');
    expect(await shown(page, '.floor-chain small')).toBe(
      'Needed before it: A partner who lifts the load back to the top.',
    );
    expect(await violations(page)).toEqual([]);
    await press(page, 'Start the set');
    for (let rep = 0; rep < 9; rep++) await press(page, '+1: one rep more');
    const fails = page.getByRole('button', { name: /^Not finished/ });
    expect(await fails.textContent()).toContain('Then hold contracted, 20 s at most');
    await fails.focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => focused(page)).toBe('Hold begins');
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Enter');
    await expect.poll(() => focused(page)).toBe('Hold is over');
    await expect.poll(() => shown(page, '.wl-live-figure')).toBe('2 s');
    await page.locator('.floor[data-written=true]').waitFor();
    await page.reload({ waitUntil: 'networkidle' });

    await expect.poll(() => shown(page, '.wl-live-phase')).toBe('Holding');
    // It went on by the clock while the page was loaded again.
    const held = Number((await shown(page, '.wl-live-figure'))?.split(' ')[0]);
    expect(held).toBeGreaterThanOrEqual(2);
    await expect.poll(() => focused(page)).toBe('Hold is over');
    await page.keyboard.press('Enter');
    for (const _ of [1, 2]) {
      await expect.poll(() => focused(page)).toBe('Lowering begins');
      await page.keyboard.press('Enter');
      await expect.poll(() => focused(page)).toBe('At the bottom');
      expect(await page.getByRole('button', { name: 'Stop for a sign' }).isVisible()).toBe(true);
      await expect.poll(() => shown(page, '.wl-live-figure'), { timeout: 10_000 }).toBe('5 s');
      await page.keyboard.press('Enter');
    }
    await expect.poll(() => focused(page)).toBe('Lowering begins');
    await kill(page);

    page = await floor('', context);
    await expect.poll(() => focused(page)).toBe('Lowering begins');
    await press(page, 'Lowering begins');
    // Much faster than the 5 s asked for: that is a sign to stop for.
    await press(page, 'At the bottom');
    await expect
      .poll(() => shown(page, '.told-sign'))
      .toContain('the muscle can no longer brake the load');
    const given = /9 reps, then failed, Hold \d+(\.\d)? s, Lower ([45](\.\d)?, ){2}[0-3](\.\d)? s/;
    await expect.poll(() => shown(page, '.floor-last')).toMatch(given);
    await press(page, 'Take back');
    await expect.poll(() => focused(page)).toBe('At the bottom');
    await press(page, 'Bring back');
    await expect.poll(() => shown(page, '.floor-last')).toMatch(given);
    await kill(page);

    // As if the tab had gone when the lowering was written, but not yet what it ended: without the
    // end, the sign, and what was taken and brought back since.
    const beside = await context.newPage();
    await beside.goto(`${here.origin}/security/`);
    await beside.evaluate(loseLastEvents, 4);
    await beside.close();
    page = await floor('', context);
    await expect.poll(() => shown(page, '.floor-last')).toMatch(given);
    expect(await shown(page, '.told-sign')).toContain('the muscle can no longer brake the load');
    await press(page, 'More');
    await press(page, 'End the session here');
    await expect.poll(() => shown(page, '.over-table tbody tr')).toMatch(given);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      press(page, 'Save as CSV'),
    ]);
    const csv = readFileSync(await download.path(), 'utf8').split('\r\n');
    expect(csv[1]).toMatch(
      /^2027-03-17,leg-extension,1,,70,kg,stack,.*,9,failure,.*Hold .*Lower .*\. A lowering much faster than prescribed/,
    );
    await context.close();
  });

  it('finds the load of a lift without history on the way', async () => {
    const page = await floor('#first-day');
    await expect.poll(() => shown(page, '.floor-place')).toContain('try 1 of 4');
    await press(page, 'Start the set');
    await page.getByRole('button', { name: /^Stop/ }).click();
    for (let rep = 0; rep < 8; rep++) await press(page, '+1: one rep more');
    await press(page, '15 or more: far too easy');
    await expect
      .poll(() => shown(page, '.floor-number'), { timeout: 20_000 })
      .toMatch(/^≈?[1-9][\d.]* kg/);
    expect(await shown(page, '.floor-place')).toContain('try 2 of 4');
    await page.context().close();
  });

  it('asks first, and runs nothing, where somebody has to be asked', async () => {
    const planner = await here.browser.newPage();
    await planner.goto(`${here.origin}/plan/#leg-day`, { waitUntil: 'networkidle' });
    await planner.getByText('Any of these signs, now or lately?').first().click();
    await planner.getByLabel('Dizziness or fainting').check();
    await planner.locator('.ask-first').waitFor();
    await expect.poll(() => planner.url()).toContain('#1.');
    const page = await floor(new URL(planner.url()).hash);
    await expect.poll(() => shown(page, '.floor-ask-first h2')).toBe('Ask first');
    expect(await page.getByRole('button', { name: 'Start the set' }).count()).toBe(0);
    await planner.close();
    await page.context().close();
  });

  it('is a list to be read without scripts, and says so', async () => {
    const context = await here.browser.newContext({ javaScriptEnabled: false, viewport: phone });
    const page = await context.newPage();
    await page.goto(`${here.origin}/floor/`);
    expect(await shown(page, '.floor-needs-script')).toContain('need JavaScript');
    expect(await page.locator('.floor-list-lift li').count()).toBeGreaterThan(5);
    expect(await page.locator('.floor button:visible').count()).toBe(0);
    await context.close();
  });
});

/** Seconds of `1:48`. */
function secondsOf(clock: string | undefined): number {
  const [minutes, seconds] = (clock ?? '').split(':').map(Number);
  return (minutes ?? Number.NaN) * 60 + (seconds ?? Number.NaN);
}
