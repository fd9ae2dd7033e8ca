// Plans sessions for many people at once in worker threads:
// node examples/batch.ts --people 2000 --workers 4 --workload from-history
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { Tinypool } from 'tinypool';
import type { Workload } from './crewQuestion.ts';
import type { CrewBatch, CrewPlans } from './planCrew.ts';

const { values } = parseArgs({
  options: {
    people: { type: 'string', default: '200' },
    workers: { type: 'string', default: String(availableParallelism()) },
    workload: { type: 'string', default: 'first-session' },
  },
});
const people = Number(values.people);
const workers = Number(values.workers);
const workload: Workload = values.workload === 'from-history' ? 'from-history' : 'first-session';
/** Large enough that handing over costs nothing, small enough that all threads end together. */
const batchSize = Math.max(1, Math.min(250, Math.ceil(people / (8 * workers))));

const pool = new Tinypool({
  filename: new URL('planCrew.ts', import.meta.url).href,
  minThreads: workers,
  maxThreads: workers,
});
const batches: CrewBatch[] = [];
for (let from = 0; from < people; from += batchSize) {
  batches.push({ workload, from, to: Math.min(people, from + batchSize) });
}

const started = performance.now();
const done: readonly CrewPlans[] = await Promise.all(batches.map((batch) => pool.run(batch)));
const seconds = (performance.now() - started) / 1000;
await pool.destroy();

const plans = done.reduce((sum, one) => sum + one.plans, 0);
const hours = done.reduce((sum, one) => sum + one.minutes, 0) / 60;
console.log(
  `${plans} sessions of ${hours.toFixed(0)} hours in all, planned in ${seconds.toFixed(1)} s`,
);
console.log(
  `${Math.round(plans / seconds)} plans a second with ${workers} worker ${workers === 1 ? 'thread' : 'threads'}`,
);
