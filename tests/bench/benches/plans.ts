import { availableParallelism } from 'node:os';
import { Tinypool } from 'tinypool';
import type { Workload } from '../../../examples/crewQuestion.ts';
import planCrew, { type CrewBatch, type CrewPlans } from '../../../examples/planCrew.ts';
import type { Bench, Ratio } from '../Benchmark.ts';
import { heldMegabytes } from '../heap.ts';

/** How many clients are planned for; a session from history takes about twenty times as long. */
const counts: Readonly<Record<Workload, { quick: readonly number[]; full: readonly number[] }>> = {
  'first-session': { quick: [10, 100, 1000, 4000], full: [10, 100, 1000, 10_000, 100_000] },
  'from-history': { quick: [10, 100], full: [10, 100, 1000] },
};
const names: Readonly<Record<Workload, string>> = {
  'first-session': 'a first session of three lifts that finds its loads',
  'from-history': 'a session of three lifts from seven logged sets',
};
const BATCH = 50;

/** Whole plans a second and the memory held, in one thread and in a pool of worker threads. */
export const plans: Bench = {
  id: 'plans',
  title: 'Whole sessions for many people',
  run: async ({ quick }) => {
    const lines: string[] = [];
    const ratios: Ratio[] = [];
    for (const workload of ['first-session', 'from-history'] as const) {
      const sizes = counts[workload][quick ? 'quick' : 'full'];
      planCrew({ workload, from: 0, to: 30 });
      lines.push(`${names[workload]}, one thread:`);
      const alone = sizes.map((count) => oneThread(workload, count));
      lines.push(...alone.map(said));
      const threads = availableParallelism();
      lines.push(`the same in a pool of ${threads} worker threads:`);
      const pooled: Speed[] = [];
      for (const count of sizes.filter((size) => size >= 100)) {
        pooled.push(await inPool(workload, count, threads));
      }
      lines.push(...pooled.map(said));
      const [last, lastPooled] = [alone.at(-1), pooled.at(-1)];
      const steady = alone.find(({ count }) => count >= Math.min(1000, (last?.count ?? 0) / 4));
      ratios.push(
        {
          id: `plans/${workload}/growth`,
          value: (last?.perSecond ?? 0) / (steady?.perSecond ?? 1),
          // within 10 % on a quiet machine; a busy one differs by more between two runs
          atLeast: 0.8,
        },
        {
          id: `plans/${workload}/pool`,
          value: (lastPooled?.perSecond ?? 0) / (last?.perSecond ?? 1),
        },
      );
      lines.push(
        `  plans a second with ${last?.count} clients against ${steady?.count}: ${(100 * ((last?.perSecond ?? 0) / (steady?.perSecond ?? 1))).toFixed(0)} %; memory held grew by ${((last?.held ?? 0) - (steady?.held ?? 0)).toFixed(1)} MB`,
      );
    }
    return { lines, ratios };
  },
};

interface Speed {
  readonly count: number;
  readonly perSecond: number;
  readonly held: number;
}

function said({ count, perSecond, held }: Speed): string {
  return `  ${String(count).padStart(6)} clients: ${perSecond.toFixed(0).padStart(5)} plans a second, ${held.toFixed(1)} MB held`;
}

function oneThread(workload: Workload, count: number): Speed {
  const start = performance.now();
  for (const batch of batches(workload, count)) planCrew(batch);
  const perSecond = (1000 * count) / (performance.now() - start);
  return { count, perSecond, held: heldMegabytes() };
}

async function inPool(workload: Workload, count: number, threads: number): Promise<Speed> {
  const pool = new Tinypool({
    filename: new URL('../../../examples/planCrew.ts', import.meta.url).href,
    minThreads: threads,
    maxThreads: threads,
  });
  // every thread has planned before the clock starts
  const warm = { workload, from: 0, to: 30 };
  await Promise.all(Array.from({ length: threads }, () => pool.run(warm)));
  const start = performance.now();
  const done: readonly CrewPlans[] = await Promise.all(
    batches(workload, count).map((batch) => pool.run(batch)),
  );
  const perSecond = (1000 * count) / (performance.now() - start);
  await pool.destroy();
  const planned = done.reduce((sum, one) => sum + one.plans, 0);
  if (planned !== count) throw new Error(`${planned} of ${count} planned`);
  return { count, perSecond, held: heldMegabytes() };
}

function batches(workload: Workload, count: number): readonly CrewBatch[] {
  return Array.from({ length: Math.ceil(count / BATCH) }, (_, index) => ({
    workload,
    from: index * BATCH,
    to: Math.min(count, (index + 1) * BATCH),
  }));
}
