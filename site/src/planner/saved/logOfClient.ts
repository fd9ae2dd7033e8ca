import { type KnownSet, setsFromLog } from '@windlass/core/progress';
import { formatTempo } from '@windlass/core/tempo';
import { type Database, type Failure, listSessionsOf } from '../../storage/index.ts';
import type { Json } from '../state/tree.ts';

/** The sets of a person's log that tell a plan something, as a draft holds them. */
export async function logOfClient(
  database: Database,
  id: string,
): Promise<{ readonly kind: 'sets'; readonly sets: readonly Json[] } | Failure> {
  const log = await listSessionsOf(database, id);
  if (log.kind === 'failed') return log;
  const sets = setsFromLog(log.records.flatMap((session) => session.sets));
  return { kind: 'sets', sets: sets.map(draftOfSet) };
}

function draftOfSet(set: KnownSet): Json {
  const { load, bodyWeight, tempo, end, ...others } = set;
  return {
    ...others,
    load: `${load.value} ${load.unit}`,
    ...(tempo && { tempo: formatTempo(tempo) }),
    end: end.kind === 'failure' ? end.kind : { ...end },
    ...(bodyWeight && { bodyWeight: `${bodyWeight.value} ${bodyWeight.unit}` }),
  };
}
