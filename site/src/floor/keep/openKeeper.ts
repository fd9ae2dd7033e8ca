import type { LoggedSet } from '@windlass/core/progress';
import type { Written } from '@windlass/core/schema';
import { savedId } from '../../planner/saved/SavedIds.ts';
import { fileOf } from '../../planner/state/fileOf.ts';
import { isList, isRecord, type Json, textAt } from '../../planner/state/tree.ts';
import {
  appendEvent,
  type Database,
  endRunning,
  type Failure,
  findRunning,
  freshId,
  keepRecord,
  listRecords,
  listRunning,
  newRecord,
  openDatabase,
  stampNow,
  startRunning,
} from '../../storage/index.ts';
import type { FloorEvent } from '../run/FloorEvent.ts';
import type { FloorSession } from '../session/FloorSession.ts';
import type { SavedRun } from './SavedRun.ts';

/** What came of keeping something: kept, written to by another tab meanwhile, or not at all. */
export type Kept = { readonly kind: 'kept' } | { readonly kind: 'changed-elsewhere' } | Failure;

/** What keeps a running session in the browser's database, event by event. */
export interface Keeper {
  /** The session that was begun last and has not been ended. */
  find(): Promise<SavedRun | null>;
  /** Begins to keep a session: from here on every event is appended. */
  begin(run: Omit<SavedRun, 'events'>): Promise<Kept>;
  /** @param number counted from 0 within the session. */
  append(id: string, number: number, event: FloorEvent): Promise<Kept>;
  /** Ends it; what was done joins the log of the client it was planned for. */
  end(
    run: SavedRun,
    done: { readonly date: string; readonly sets: readonly LoggedSet[] },
  ): Promise<Kept>;
}

/** Opens the browser's database, or says why it keeps nothing. */
export async function openKeeper(onLost: () => void): Promise<Keeper | Failure> {
  const opened = await openDatabase({ onLost });
  if (opened.kind === 'failed') return opened;
  const { database } = opened;
  return {
    find: () => find(database),
    begin: async ({ id, plan, startedAt, session }) => {
      const started = await startRunning(database, { id, plan, startedAt });
      return started.kind === 'failed'
        ? started
        : kept(await appendEvent(database, id, 0, { kind: 'opened', session: plain(session) }));
    },
    append: async (id, number, event) =>
      kept(await appendEvent(database, id, number + 1, plain(event))),
    end: (run, done) => end(database, run, done),
  };
}

function kept(answer: { kind: 'appended' } | { kind: 'changed-elsewhere' } | Failure): Kept {
  return answer.kind === 'appended' ? { kind: 'kept' } : answer;
}

/** The same as plain data, as the database takes it. */
function plain(value: FloorSession | FloorEvent): Written {
  return JSON.parse(JSON.stringify(value));
}

async function find(database: Database): Promise<SavedRun | null> {
  const list = await listRunning(database);
  const [latest] = list.kind === 'list' ? list.running : [];
  const found = latest && (await findRunning(database, latest.id));
  if (found?.kind !== 'found') return null;
  const { id, plan, startedAt, events } = found.record;
  const [opened, ...happened] = events;
  if (!isRecord(opened) || !isRecord(opened.session) || !isList(opened.session.steps)) return null;
  // Both were written by this page as what they are read as here.
  const session = opened.session as unknown as FloorSession;
  return { id, plan, startedAt, session, events: happened as unknown as readonly FloorEvent[] };
}

async function end(
  database: Database,
  { id, plan }: SavedRun,
  { date, sets }: { readonly date: string; readonly sets: readonly LoggedSet[] },
): Promise<Kept> {
  if (sets.length === 0) return ended(await endRunning(database, id, null, stampNow()));
  const client = await clientOf(database, plan);
  if (client.kind === 'failed') return client;
  const done = newRecord(id, { clientId: client.id, date, plan, sets });
  return ended(await endRunning(database, id, done, stampNow()));
}

function ended(answer: { readonly kind: 'ended' } | Failure): Kept {
  return answer.kind === 'ended' ? { kind: 'kept' } : answer;
}

/**
 * The kept client that the plan came from, or else the one of this name; where none is kept, the one
 * of the plan is from now on.
 */
async function clientOf(
  database: Database,
  plan: Json,
): Promise<{ readonly kind: 'client'; readonly id: string } | Failure> {
  const name = textAt(plan, ['client', 'name']);
  const list = await listRecords(database, 'clients');
  if (list.kind === 'failed') return list;
  const known =
    list.records.find(({ id }) => id === savedId(plan, 'client')) ??
    list.records.find(({ client }) => textAt(client, ['name']) === name);
  if (known) return { kind: 'client', id: known.id };
  const client = isRecord(plan) ? fileOf(plan.client ?? {}) : {};
  const added = await keepRecord(database, 'clients', newRecord(freshId(), { client }), stampNow());
  if (added.kind === 'failed') return added;
  if (added.kind === 'kept') return { kind: 'client', id: added.record.id };
  return { kind: 'failed', reason: 'other', detail: added.kind };
}
