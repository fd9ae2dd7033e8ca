import { Worker } from 'node:worker_threads';

const LONGEST_NAME = 200;

/** A watch over inputs that never end, which the thread that tries them could not tell about. */
export interface Watch {
  /** Says what is tried now. */
  readonly now: (what: string) => void;
  readonly end: () => Promise<number>;
}

/** Starts the watch: after `mostSeconds` with the same input it names the input and ends the process. */
export function watchOver(mostSeconds: number): Watch {
  const shared = new SharedArrayBuffer(8 + LONGEST_NAME);
  const turn = new Int32Array(shared, 0, 1);
  const length = new Int32Array(shared, 4, 1);
  const name = new Uint8Array(shared, 8);
  const worker = new Worker(WATCHER, {
    eval: true,
    workerData: { shared, mostSeconds, pid: process.pid },
  });
  worker.unref();
  const encoder = new TextEncoder();
  return {
    now: (what) => {
      const bytes = encoder.encode(what).subarray(0, LONGEST_NAME);
      name.set(bytes);
      length[0] = bytes.length;
      Atomics.add(turn, 0, 1);
    },
    end: () => worker.terminate(),
  };
}

const WATCHER = `
const { workerData } = require('node:worker_threads');
const { writeSync } = require('node:fs');
const turn = new Int32Array(workerData.shared, 0, 1);
const length = new Int32Array(workerData.shared, 4, 1);
const name = new Uint8Array(workerData.shared, 8);
let seen = Atomics.load(turn, 0);
setInterval(() => {
  const now = Atomics.load(turn, 0);
  if (now === seen && now > 0) {
    const what = Buffer.from(name.slice(0, length[0])).toString();
    writeSync(2, '\\nNever ends: ' + what + '\\n');
    process.kill(workerData.pid, 'SIGKILL');
  }
  seen = now;
}, workerData.mostSeconds * 1000);
`;
