import { inspect } from 'node:util';
import { randomFrom } from './inputs/Random.ts';
import { shrink } from './shrink.ts';
import type { Target } from './Target.ts';
import { lastingFault, tryInput } from './tryInput.ts';

/** An input that a target does not take well. */
export interface Failure {
  readonly target: string;
  readonly fault: string;
  /** The smallest input that was found to fail, as it would be written in code. */
  readonly input: string;
  /** Draws this input again. */
  readonly seed: number;
}

/** How much is tried, and what is told on the way. */
export interface FuzzOptions {
  readonly count: number;
  readonly seed: number;
  /** Told before each input, for whoever watches for one that never ends. */
  readonly before?: (target: Target, seed: number) => void;
  readonly after?: (done: number) => void;
}

const MOST_FAILURES = 10;

/** Tries `count` inputs, spread over the targets by their weights; stops after ten failures. */
export async function fuzz(
  targets: readonly Target[],
  { count, seed, before, after }: FuzzOptions,
): Promise<readonly Failure[]> {
  const turns = targets.flatMap((target) =>
    Array<Target>(Math.ceil(target.weight * 10)).fill(target),
  );
  const failures: Failure[] = [];
  const failing = new Set<string>();
  for (let done = 0; done < count && failures.length < MOST_FAILURES; done += 1) {
    const own = (seed + Math.imul(done, 0x9e3779b1)) >>> 0;
    const random = randomFrom(own);
    const target = random.pick(turns);
    if (failing.has(target.name)) continue;
    before?.(target, own);
    const input = target.make(random);
    const fault = (await tryInput(target, input)) && (await lastingFault(target, input));
    if (fault) {
      failing.add(target.name);
      failures.push(await described(target, input, fault, own));
    }
    after?.(done + 1);
  }
  return failures;
}

async function described(
  target: Target,
  input: unknown,
  fault: string,
  seed: number,
): Promise<Failure> {
  const isSlow = fault.startsWith('took');
  const small = isSlow
    ? input
    : await shrink(input, async (less) => (await tryInput(target, less)) !== null);
  const shown = inspect(small, { depth: null, maxStringLength: 4000, breakLength: 100 });
  return {
    target: target.name,
    fault: (await tryInput(target, small)) ?? fault,
    input: shown,
    seed,
  };
}
