// Usage: run.ts [path …]. Prints the scores of each page on a phone, and what keeps one from its target.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import sparticuz from '@sparticuz/chromium';
import { launch } from 'chrome-launcher';
import lighthouse, { type RunnerResult } from 'lighthouse';
import { root } from '../docs/workspaceFiles.ts';
import { serveCompressed } from './serveCompressed.ts';

/** Least scores of a hundred. Performance counts on a machine of more than 1000 by its own index. */
const targets = { performance: 98, accessibility: 100, 'best-practices': 100, seo: 100 };
/** A busy machine makes a page look slow and never fast, so the best of some tries is the nearest. */
const TRIES = 3;

const dist = join(root, 'site/dist');
const asked = process.argv.slice(2);
const usual = ['/plan/', '/floor/', '/tools/load-for-window/', '/guides/choosing-a-load/'];
const paths = asked.length > 0 ? asked : usual.filter((path) => existsSync(join(dist, path)));

const { origin, server } = await serveCompressed(dist);
const browser = await openChrome();
for (const path of paths) report(path, await best(`${origin}${path}`));
browser.kill();
server.close();

/** The browser of the journeys where it comes with the packages, an installed Chrome elsewhere. */
async function openChrome() {
  const isBrought = process.platform === 'linux' && process.arch === 'x64';
  return launch({
    chromeFlags: ['--headless', '--no-sandbox'],
    ...(isBrought && { chromePath: await sparticuz.executablePath() }),
  });
}

type Report = RunnerResult['lhr'];

async function best(url: string): Promise<Report> {
  let top: Report | undefined;
  for (let tries = 0; tries < TRIES; tries += 1) {
    const run = await lighthouse(url, {
      port: browser.port,
      logLevel: 'error',
      onlyCategories: Object.keys(targets),
    });
    const fault = run === undefined ? 'no report' : run.lhr.runtimeError?.message;
    if (run === undefined || fault) throw new Error(`${url} could not be measured: ${fault}`);
    if (top === undefined || scoreOf(run.lhr, 'performance') > scoreOf(top, 'performance')) {
      top = run.lhr;
    }
    if (misses(top).length === 0) break;
  }
  return top as Report;
}

function scoreOf(report: Report, category: string): number {
  return Math.round(100 * (report.categories[category]?.score ?? 0));
}

function misses(report: Report): readonly string[] {
  return Object.entries(targets).flatMap(([category, least]) =>
    scoreOf(report, category) < least ? [category] : [],
  );
}

function report(path: string, found: Report): void {
  const scores = Object.keys(targets).map((category) => `${category} ${scoreOf(found, category)}`);
  const times = [
    'first-contentful-paint',
    'largest-contentful-paint',
    'total-blocking-time',
    'cumulative-layout-shift',
  ];
  const shown = times.map((id) => `${id} ${found.audits[id]?.displayValue}`);
  const machine = `machine ${found.environment.benchmarkIndex}`;
  console.log(`${path}: ${scores.join(', ')}; ${shown.join(', ')}; ${machine}`);
  for (const category of misses(found)) {
    process.exitCode = 1;
    const refs = found.categories[category]?.auditRefs ?? [];
    for (const { id, weight } of refs) {
      const audit = found.audits[id];
      if (weight > 0 && audit?.score !== null && (audit?.score ?? 1) < 0.9) {
        console.log(`  ${category}: ${audit?.title} ${audit?.displayValue ?? ''}`);
      }
    }
  }
}
