// npm test: every check of the project, two at a time, each with its own line; ends with one summary line.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  CommandError,
  ensureBuilt,
  ensureInstalled,
  main,
  root,
  runBin,
  runFile,
} from './workspace.mjs';

const scratch = mkdtempSync(join(tmpdir(), 'windlass-test-'));
const quiet = { quiet: true, env: { NO_COLOR: '1' } };

const checks = [
  {
    name: 'lint',
    work: () => runBin('biome', ['ci', '--colors=off', '--error-on-warnings', '.'], quiet),
  },
  { name: 'types of core', work: () => types('packages/core') },
  { name: 'build of the packages', work: () => build('calculators') },
  {
    name: 'types of calculators',
    after: ['build of the packages'],
    work: () => types('packages/calculators'),
  },
  { name: 'types of the offline worker', work: () => types('site/offline/worker') },
  { name: 'types of examples', after: ['build of the packages'], work: () => types('examples') },
  { name: 'types of tests', after: ['build of the packages'], work: () => types('tests') },
  {
    name: 'unit and property tests',
    after: ['build of the packages'],
    work: () => vitest('unit', []),
  },
  {
    name: 'packages as installed',
    after: ['build of the packages'],
    work: () => runFile('tests/packages/check.ts', [], quiet),
  },
  { name: 'build of the site', after: ['build of the packages'], work: () => build('site') },
  {
    name: 'types of the site',
    after: ['build of the site'],
    work: () => runBin('astro', ['check'], { ...quiet, cwd: join(root, 'site') }),
  },
  {
    // Alone at the end: what a visitor waits for is not to be measured beside the other tests.
    name: 'journey in a browser',
    after: ['build of the site', 'unit and property tests'],
    work: () => vitest('browser', ['--config', 'tests/browser/vitest.config.ts']),
  },
];

const tally = { passed: 0, failed: 0 };

await main(async () => {
  const started = Date.now();
  await ensureInstalled();
  await runAll(checks, 2);
  rmSync(scratch, { recursive: true, force: true });
  console.log(`\nFinished in ${seconds(started)}.`);
  console.log(`windlass: ${tally.passed} passed, ${tally.failed} failed`);
  if (tally.failed > 0) process.exitCode = 1;
});

/** Starts each check when those it comes after have passed, at most `lanes` at a time. */
async function runAll(list, lanes) {
  const waiting = new Set(list);
  const passed = new Set();
  const broken = new Set();
  const running = new Map();
  while (waiting.size + running.size > 0) {
    for (const check of waiting) {
      const needs = check.after ?? [];
      if (needs.some((name) => broken.has(name))) {
        waiting.delete(check);
        broken.add(check.name);
        tally.failed += 1;
        console.log(`NOT RUN ${check.name}: it comes after a check that failed`);
      } else if (running.size < lanes && needs.every((name) => passed.has(name))) {
        waiting.delete(check);
        running.set(check.name, report(check));
      }
    }
    if (running.size === 0) continue;
    const { name, ok } = await Promise.race(running.values());
    running.delete(name);
    (ok ? passed : broken).add(name);
  }
}

async function report({ name, work }) {
  const started = Date.now();
  const { status, output, tests } = await work();
  const ok = status === 0;
  tally.passed += tests?.passed ?? (ok ? 1 : 0);
  tally.failed += tests ? Math.max(tests.failed, ok ? 0 : 1) : ok ? 0 : 1;
  const count = tests ? ` (${tests.passed + tests.failed} tests)` : '';
  console.log(`${ok ? 'ok  ' : 'FAIL'} ${name}${count}, ${seconds(started)}`);
  if (!ok) console.log(indent(output));
  return { name, ok };
}

function types(folder) {
  return runBin('tsc', ['-p', join(folder, 'tsconfig.json')], quiet);
}

async function build(target) {
  try {
    await ensureBuilt(target, () => {});
    return { status: 0, output: '' };
  } catch (error) {
    if (!(error instanceof CommandError)) throw error;
    return { status: 1, output: error.message };
  }
}

async function vitest(name, args) {
  const file = join(scratch, `${name}.json`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const result = await runBin('vitest', ['run', ...args, ...reporters], {
    ...quiet,
    env: { NO_COLOR: '1' },
  });
  return { ...result, tests: readTally(file) };
}

/** What the runner counted; a run that wrote no report counts as the one failure it is. */
function readTally(file) {
  try {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(file, 'utf8'));
    return { passed: numPassedTests, failed: numFailedTests };
  } catch {
    return undefined;
  }
}

function seconds(since) {
  return `${((Date.now() - since) / 1000).toFixed(1)} s`;
}

function indent(text) {
  return text
    .trimEnd()
    .split('\n')
    .map((line) => `     ${line}`)
    .join('\n');
}
