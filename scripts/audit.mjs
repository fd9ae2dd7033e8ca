// npm run audit: asks the registry which of the installed packages have known weaknesses.
import { ensureInstalled, main, pnpm, run } from './workspace.mjs';

await main(async () => {
  await ensureInstalled();
  const { status, output } = await run('npx', ['--yes', pnpm, 'audit'], { quiet: true });
  console.log(output.trim());
  if (output.includes('AUDIT_BAD_RESPONSE')) {
    console.log(
      '\nThe registry in use answers no audits. Run this where the public one can be reached.',
    );
  }
  process.exitCode = typeof status === 'number' ? status : 1;
});
