import { execFileSync } from 'node:child_process';

/** Runs a program and gives what it printed; throws with all of it where the program fails. */
export function run(command: string, args: readonly string[], cwd: string): string {
  try {
    return execFileSync(command, args, {
      cwd,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
    });
  } catch (error) {
    const {
      stdout = '',
      stderr = '',
      message,
    } = error as Error & Record<'stdout' | 'stderr', string>;
    throw new Error(`${message}\n${stdout}${stderr}`);
  }
}
