import { type Json, listAt, setAt } from '../state/tree.ts';

const SETS = ['sets'];

/** A person whose known sets take in those of the log; one that is known already is not taken twice. */
export function withLog(client: Json, log: readonly Json[]): Json {
  const own = listAt(client, SETS);
  const known = new Set(own.map(keyOf));
  return setAt(client, SETS, [...own, ...log.filter((set) => !known.has(keyOf(set)))]);
}

/** A person without the sets that stand in the log, which is the one place that keeps them. */
export function withoutLog(client: Json, log: readonly Json[]): Json {
  const logged = new Set(log.map(keyOf));
  const own = listAt(client, SETS).filter((set) => !logged.has(keyOf(set)));
  return setAt(client, SETS, own);
}

function keyOf(set: Json): string {
  return JSON.stringify(set);
}
