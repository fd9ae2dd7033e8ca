// Packs both packages at the version of a tag and publishes what the registry does not have yet.
// With --dry-run everything happens but the publishing.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { CommandError, ensureBuilt, ensureInstalled, main, pnpm, root, run } from './workspace.mjs';

const { values } = parseArgs({
  options: {
    tag: { type: 'string', default: '' },
    repository: { type: 'string', default: '' },
    'dry-run': { type: 'boolean', default: false },
  },
});

await main(async () => {
  await ensureInstalled();
  await ensureBuilt('calculators');
  // The calculators need the core, so the core comes first.
  for (const name of ['core', 'calculators']) await publish(name);
});

async function publish(name) {
  const folder = join(root, 'packages', name);
  const manifest = join(folder, 'package.json');
  const before = readFileSync(manifest, 'utf8');
  const { version, name: full } = JSON.parse(before);
  if (values.tag !== `v${version}`) {
    throw new CommandError(`The tag ${values.tag} does not name version ${version} of ${full}.`);
  }
  if (await isPublished(`${full}@${version}`)) {
    console.log(`${full}@${version} is published already.`);
    return;
  }
  const to = mkdtempSync(join(tmpdir(), 'windlass-publish-'));
  try {
    // npm compares the repository with the one that signs the statement of origin.
    writeFileSync(manifest, withRepository(before, `packages/${name}`));
    await must('npx', ['--yes', pnpm, 'pack', '--pack-destination', to], folder);
    const [tarball = ''] = readdirSync(to);
    const rehearsal = values['dry-run'] ? ['--dry-run'] : ['--provenance'];
    await must('npm', ['publish', join(to, tarball), '--access', 'public', ...rehearsal], root);
  } finally {
    writeFileSync(manifest, before);
    rmSync(to, { recursive: true });
  }
}

function withRepository(manifest, directory) {
  if (values.repository === '') return manifest;
  const repository = { type: 'git', url: `git+${values.repository}.git`, directory };
  return JSON.stringify({ ...JSON.parse(manifest), repository }, null, 2);
}

async function isPublished(release) {
  const { status, output } = await run('npm', ['view', release, 'version'], { quiet: true });
  if (status === 0) return output.trim() !== '';
  if (output.includes('E404')) return false;
  throw new CommandError(`npm view ${release} failed:\n${output}`);
}

async function must(command, args, cwd) {
  const { status } = await run(command, args, { cwd });
  if (status !== 0) throw new CommandError(`${command} ${args[0]} ended with ${status}.`);
}
