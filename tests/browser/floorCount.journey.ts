import { readFileSync } from 'node:fs';
import { cueTimeline } from '@windlass/core/tempo';
import { describe, expect, it } from 'vitest';
import firstDay from '../../examples/boathouse/first-day.json' with { type: 'json' };
import gym from '../../examples/boathouse/gym.json' with { type: 'json' };
import { onsets } from './onsets.ts';
import { openFloor, phone, press, shown, warmUp } from './onTheFloor.ts';
import { siteInBrowser } from './siteInBrowser.ts';

const here = siteInBrowser();

describe('the count', () => {
  it('is on the audio clock ahead of a busy page, right to 20 ms, and shown right after it', async () => {
    const context = await here.browser.newContext({ viewport: phone });
    await context.addInitScript(() => {
      const starts: { when: number; now: number; at: number }[] = [];
      Object.assign(globalThis, { starts });
      const { start } = AudioBufferSourceNode.prototype;
      AudioBufferSourceNode.prototype.start = function (when = 0, ...rest) {
        const now = this.context.currentTime;
        starts.push({ when, now, at: performance.timeOrigin + performance.now() });
        return start.call(this, when, ...rest);
      };
    });
    const page = await openFloor(here, '', context);
    await warmUp(page);
    await press(page, 'End it');
    await page.evaluate(() => {
      (globalThis as unknown as { starts: unknown[] }).starts.length = 0;
    });
    await press(page, 'Start the set');
    await page.waitForTimeout(1500);
    await page.evaluate(() => {
      const end = performance.now() + 12_000;
      while (performance.now() < end);
    });
    await expect.poll(() => shown(page, '.floor-done-reps')).toMatch(/^1 rep/);
    const starts = await page.evaluate(
      () =>
        (globalThis as unknown as { starts: { when: number; now: number; at: number }[] }).starts,
    );
    const [first] = starts;
    if (!first) throw new Error('nothing was played');
    // All of the set's first three minutes were handed over at once, before the page was busy.
    const early = starts.filter(({ at }) => at - first.at < 1000);
    expect(early.length).toBeGreaterThan(100);
    const tempo = {
      lowerSeconds: 3,
      pauseAfterLowerSeconds: 0,
      liftSeconds: 2,
      pauseAfterLiftSeconds: 0,
    } as const;
    const { cues, endSeconds } = cueTimeline(tempo, {
      reps: 31,
      startsWith: 'lift',
      leadInSeconds: 5,
    });
    const ideal = [...cues.map(({ atSeconds }) => atSeconds), endSeconds].map((at) => at + 5);
    const heard = [...new Set(early.map(({ when }) => Math.round((when - first.when) * 1000)))];
    const off = heard.map((at) => Math.min(...ideal.map((right) => Math.abs(right * 1000 - at))));
    expect(Math.max(...off)).toBeLessThan(20);
    for (const { when, now } of early) expect(when).toBeGreaterThanOrEqual(now);
    await context.close();
  });

  it('is saved as a file whose every sound is right to 20 ms over ten minutes', async () => {
    const [press1] = firstDay.intent.lifts;
    // A hundred repetitions of 6 s, on a lift without history, which any window can be asked of.
    const lift = { ...press1, window: { minReps: 90, maxReps: 100 }, tempo: '4-0-2-0' };
    const plan = { ...firstDay, gym, intent: { ...firstDay.intent, lifts: [lift] } };
    const planner = await here.browser.newPage();
    await planner.goto(`${here.origin}/plan/`, { waitUntil: 'networkidle' });
    await planner.setInputFiles('input[type=file]', {
      name: 'plan.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(plan)),
    });
    await expect.poll(() => planner.url()).toContain('#1.');
    await expect.poll(() => planner.locator('.lift h2').count()).toBe(1);
    await planner.waitForTimeout(500);
    const page = await openFloor(here, new URL(planner.url()).hash);
    await expect.poll(() => shown(page, '.floor-place')).toContain('try 1 of 4');
    await press(page, 'More');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      press(page, 'Save the count as an audio file'),
    ]);
    expect(download.suggestedFilename()).toBe('leg-press-4-0-2-0-100-reps.wav');
    const file = readFileSync(await download.path());
    const tempo = {
      lowerSeconds: 4,
      pauseAfterLowerSeconds: 0,
      liftSeconds: 2,
      pauseAfterLiftSeconds: 0,
    } as const;
    const { cues, endSeconds } = cueTimeline(tempo, {
      reps: 100,
      startsWith: 'lower',
      leadInSeconds: 5,
    });
    const heard = onsets(file);
    // 1 s of silence and 5 s of lead-in before the first repetition; the last sound closes the set.
    const ideal = [...cues.map(({ atSeconds }) => atSeconds + 6), endSeconds + 6];
    expect(endSeconds).toBe(600);
    const off = ideal.map((right) => Math.min(...heard.map((at) => Math.abs(at - right))));
    expect(Math.max(...off)).toBeLessThan(0.02);
    await planner.close();
    await page.context().close();
  }, 120_000);
});
