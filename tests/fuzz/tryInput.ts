import { inspect } from 'node:util';
import { faultIn } from './faultIn.ts';
import { pollution } from './pollution.ts';
import type { Target } from './Target.ts';

/** What is wrong with a target's answer to an input; `null` where nothing is. */
export async function tryInput({ run, mostMs }: Target, input: unknown): Promise<string | null> {
  const started = process.cpuUsage();
  try {
    const answer = run(input as never);
    const output = answer instanceof Promise ? await answer : answer;
    const fault = pollution() ?? faultIn(output, false) ?? null;
    if (fault !== null && (faultIn(output, true) !== null || !echoes(input))) return fault;
  } catch (error) {
    return error instanceof Error ? `${error.name}: ${error.message}` : `threw ${inspect(error)}`;
  }
  const tookMs = process.cpuUsage(started).user / 1000;
  return tookMs > mostMs ? `took ${Math.round(tookMs)} ms, ${mostMs} ms are allowed` : null;
}

/** Whether the input itself holds the words of a lost number, which may then come out again. */
function echoes(input: unknown): boolean {
  return /NaN|undefined|Infinity|\[object/.test(
    inspect(input, { depth: 20, maxStringLength: null }),
  );
}

/** The fault of an input that stays a fault when it is tried again; slowness by chance does not. */
export async function lastingFault(target: Target, input: unknown): Promise<string | null> {
  for (let times = 1; times < 3; times += 1) {
    if ((await tryInput(target, input)) === null) return null;
  }
  return tryInput(target, input);
}
