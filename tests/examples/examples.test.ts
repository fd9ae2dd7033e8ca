import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const examples = join(root, 'examples');
const boathouse = join(examples, 'boathouse');
const scratch = mkdtempSync(join(tmpdir(), 'windlass-examples-'));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

/** Runs an example as a user does: on the built packages, in a process of its own. */
function run(program: string, ...args: readonly string[]) {
  return spawnSync(process.execPath, [join(examples, program), ...args], { encoding: 'utf8' });
}

interface PlanFile {
  gym: Readonly<Record<string, unknown>>;
}

function planFile(change: (plan: PlanFile) => unknown): string {
  const plan: PlanFile = JSON.parse(readFileSync(join(boathouse, 'pull-day.json'), 'utf8'));
  plan.gym = JSON.parse(readFileSync(join(boathouse, 'gym.json'), 'utf8'));
  const path = join(scratch, 'plan.json');
  writeFileSync(path, JSON.stringify(change(plan)));
  return path;
}

/** Programs are named in lower case; what they share is named as what it exports. */
const programs = readdirSync(examples).filter((name) => /^[a-z-]+\.ts$/.test(name));
const plans = readdirSync(boathouse).filter((name) => name.endsWith('-day.json'));

describe('examples', () => {
  it.each(programs.filter((name) => name !== 'plan-session.ts'))('%s runs', (program) => {
    const { status, stdout, stderr } = run(program);
    expect(stderr).toBe('');
    expect(status).toBe(0);
    expect(stdout).not.toMatch(/NaN|undefined|Infinity/);
  });

  it.each(plans)('%s gives a sheet, for people and for machines', (name) => {
    const path = join(boathouse, name);
    const text = run('plan-session.ts', path);
    expect(text.status).toBe(0);
    expect(text.stdout).not.toMatch(/NaN|undefined|Infinity/);
    expect(text.stdout.split('\n').filter((line) => line.length > 78)).toEqual([]);
    const json = JSON.parse(run('plan-session.ts', path, '--json').stdout);
    expect(json.kind).toBe('sheet');
    expect(json.lifts.length).toBeGreaterThan(0);
    for (const lift of json.lifts) expect(text.stdout).toContain(lift.name);
  });
});

describe('the boathouse days', () => {
  const sheetOf = (name: string, ...more: readonly string[]) =>
    JSON.parse(run('plan-session.ts', join(boathouse, name), '--json', ...more).stdout);

  it('show a pair, what a time limit takes, and the next day', () => {
    const sheet = sheetOf('pair-day.json');
    const joins = sheet.lifts.map((lift: { join?: { kind: string } }) => lift.join?.kind);
    expect(joins).toEqual([undefined, 'pair', 'pair', undefined]);
    expect(sheet.minutes.total).toBeLessThanOrEqual(20);
    expect(sheet.limit.dropped.length).toBeGreaterThan(0);
    expect(sheet.next.date > sheet.date).toBe(true);
  });

  it('show a set that goes on past failure, and an exercise chosen for muscles', () => {
    const { lifts } = sheetOf('past-failure-day.json');
    expect(lifts[0].chain.stages).toHaveLength(2);
    expect(lifts.at(-1).chosenFor[0]).toMatch(/^Chosen for: /);
  });

  it('have none of it for a first day', () => {
    const { lifts, limit } = sheetOf('first-day.json');
    expect(limit).toBeUndefined();
    for (const lift of lifts) {
      expect(lift.kind).toBe('finding');
      expect(lift.chain ?? lift.join).toBeUndefined();
    }
  });

  it('fit into the minutes that are given on the command line', () => {
    expect(sheetOf('pull-day.json', '--minutes', '15').minutes.total).toBeLessThanOrEqual(15);
    const wrong = run('plan-session.ts', join(boathouse, 'pull-day.json'), '--minutes', 'soon');
    expect(wrong.stderr).toContain('--minutes 20');
    expect(wrong.status).toBe(2);
  });
});

describe('a broken plan file', () => {
  it.each([
    ['names no file', () => 'missing.json', 'There is no file'],
    ['is not JSON', () => join(root, 'README.md'), 'is not JSON'],
    [
      'has a plate without a unit',
      () =>
        planFile((plan) => ({
          ...plan,
          gym: { ...plan.gym, plates: [{ weight: '20', pieces: 2 }] },
        })),
      'gym.plates.0.weight: Give the weight of one plate with its unit',
    ],
    [
      'has a field that does not exist',
      () => planFile((plan) => ({ ...plan, notes: 'x' })),
      'notes: There is no field "notes" here.',
    ],
    ['is not an object', () => planFile(() => []), 'the file: Give the plan as an object'],
  ])('that %s is answered with the place and status 2', (_, path, message) => {
    const { status, stderr, stdout } = run('plan-session.ts', path());
    expect(stderr).toContain(message);
    expect(stderr).not.toMatch(/\bat .*:\d+:\d+/);
    expect(stdout).toBe('');
    expect(status).toBe(2);
  });

  it('that is not named says how to name one', () => {
    const { status, stderr } = run('plan-session.ts');
    expect(stderr).toContain('npm run plan -- examples/boathouse/pull-day.json');
    expect(status).toBe(2);
  });
});
