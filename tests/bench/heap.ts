import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

setFlagsFromString('--expose-gc');
const collect: () => void = runInNewContext('gc');

/** Megabytes that are really held, after a collection. */
export function heldMegabytes(): number {
  collect();
  return process.memoryUsage().heapUsed / 2 ** 20;
}
