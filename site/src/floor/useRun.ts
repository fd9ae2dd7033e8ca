import { useCallback, useEffect, useReducer, useRef, useState } from 'preact/hooks';
import { decodePlan } from '../planner/link/decodePlan.ts';
import { examples, firstExample } from '../planner/state/examples.ts';
import type { Json } from '../planner/state/tree.ts';
import type { Failure } from '../storage/Failure.ts';
import { freshId } from '../storage/freshId.ts';
import { words as storageWords } from '../storage/words.ts';
import { wallNow } from './count/wallClock.ts';
import { flagRunning } from './keep/flagRunning.ts';
import { holdTab, type TabHold } from './keep/holdTab.ts';
import type { Keeper, Kept } from './keep/openKeeper.ts';
import type { SavedRun } from './keep/SavedRun.ts';
import { fetchDesk, fetchKeeper } from './later.ts';
import type { FloorEvent, FloorHappening } from './run/FloorEvent.ts';
import { whileClosed } from './run/whileClosed.ts';
import type { FloorSession } from './session/FloorSession.ts';
import { words } from './words.ts';

/** Who may run which session. */
export type RunStatus =
  | { readonly kind: 'opening' }
  /** Another tab runs it. */
  | { readonly kind: 'elsewhere' }
  /** The address carries another plan than the session that goes on. */
  | { readonly kind: 'other'; readonly run: SavedRun }
  | { readonly kind: 'here' };

/** A session that is run, and what can be done with it. */
export interface RunControl {
  readonly status: RunStatus;
  readonly plan: Json;
  readonly session: FloorSession;
  readonly events: readonly FloorEvent[];
  readonly notice: string | null;
  /** Whether everything that happened has reached the browser's database. */
  readonly isWritten: boolean;
  readonly dismiss: () => void;
  /** Says something that is not of the session. */
  readonly note: (message: string) => void;
  readonly say: (...what: readonly FloorHappening[]) => void;
  /** Adds what happened at its own time. */
  readonly add: (events: readonly FloorEvent[]) => void;
  readonly takeOver: () => void;
  readonly goOn: () => void;
  /** Ends what is run, into the log; afterwards nothing is kept of it but that. */
  readonly end: (done: Parameters<Keeper['end']>[1], run?: SavedRun) => Promise<Kept>;
  /** Begins anew with the plan of the address. */
  readonly beginAgain: () => void;
}

type Current = Omit<SavedRun, 'startedAt'> & { readonly startedAt: string | null };

/**
 * Runs one session: takes up the one that goes on, or the one of the address; tells every event to
 * the browser's database at once; leaves it to one tab.
 */
export function useRun(served: FloorSession): RunControl {
  const [status, setStatus] = useState<RunStatus>({ kind: 'opening' });
  const [notice, setNotice] = useState<string | null>(null);
  const [, repaint] = useReducer((count: number, _: null) => count + 1, 0);
  const current = useRef<Current>(notBegun(firstExample, served));
  const wanted = useRef({ plan: firstExample, session: served });
  const keeper = useRef<Keeper | null>(null);
  /** Why there is none. */
  const notOpened = useRef<Failure>({ kind: 'failed', reason: 'closed', detail: '' });
  const queue = useRef<Promise<unknown>>(Promise.resolve());
  const unwritten = useRef(0);
  const hold = useRef<TabHold | null>(null);

  const show = useCallback((run: Current) => {
    current.current = run;
    repaint(null);
  }, []);

  const failed = useCallback((kept: Kept) => {
    if (kept.kind === 'changed-elsewhere') setStatus({ kind: 'elsewhere' });
    if (kept.kind === 'failed') setNotice(storageWords.failed(kept));
  }, []);

  const write = useCallback((task: (keeper: Keeper) => Promise<Kept>) => {
    unwritten.current += 1;
    queue.current = queue.current.then(async () => {
      if (keeper.current) failed(await task(keeper.current));
      unwritten.current -= 1;
      if (unwritten.current === 0) repaint(null);
    });
  }, []);

  const add = useCallback((happened: readonly FloorEvent[]) => {
    if (happened.length === 0) return;
    const { events, startedAt } = current.current;
    const begun = startedAt ?? new Date().toISOString();
    const next = { ...current.current, startedAt: begun, events: [...events, ...happened] };
    if (startedAt === null) {
      flagRunning(true);
      write((to) => to.begin(next));
    }
    for (const [place, event] of happened.entries()) {
      write((to) => to.append(next.id, events.length + place, event));
    }
    show(next);
  }, []);

  const say = useCallback((...what: readonly FloorHappening[]) => {
    const at = wallNow();
    add(what.map((one) => ({ ...one, at })));
  }, []);

  const take = useCallback((run: SavedRun) => {
    show(run);
    flagRunning(true);
    setStatus({ kind: 'here' });
    const closed = whileClosed(run.session, run.events, wallNow());
    if (!closed) return;
    add([closed.event]);
    setNotice(words.closedMeanwhile(closed.time));
  }, []);

  /** The session that goes on, or that of the address. */
  const open = useCallback(async () => {
    const [found, link] = await Promise.all([keeper.current?.find() ?? null, readLink()]);
    if (link.notice !== null) setNotice(link.notice);
    if (link.plan) wanted.current = link.plan;
    const isSame = !link.plan || JSON.stringify(link.plan.plan) === JSON.stringify(found?.plan);
    if (found && !isSame) return setStatus({ kind: 'other', run: found });
    if (found) return take(found);
    flagRunning(false);
    show(notBegun(wanted.current.plan, wanted.current.session));
    setStatus({ kind: 'here' });
  }, []);

  useEffect(() => {
    const opening = fetchKeeper()
      .then(({ openKeeper }) => openKeeper(() => setStatus({ kind: 'elsewhere' })))
      .then((opened) => {
        if ('kind' in opened) {
          notOpened.current = opened;
          failed(opened);
        } else keeper.current = opened;
      })
      .catch(() => setNotice(words.notFetched));
    hold.current = holdTab((has) => {
      if (has) void opening.then(open);
      else setStatus({ kind: 'elsewhere' });
    });
    hold.current.ask('if-free');
    addEventListener('hashchange', open);
    return () => {
      removeEventListener('hashchange', open);
      hold.current?.release();
    };
  }, []);

  return {
    status,
    plan: current.current.plan,
    session: current.current.session,
    events: current.current.events,
    notice,
    isWritten: unwritten.current === 0,
    dismiss: () => setNotice(null),
    note: setNotice,
    say,
    add,
    takeOver: () => hold.current?.ask('take'),
    goOn: () => status.kind === 'other' && take(status.run),
    end: async (done, run) => {
      await queue.current;
      const { startedAt, ...rest } = current.current;
      const ending = run ?? { ...rest, startedAt: startedAt ?? new Date().toISOString() };
      const kept = await (keeper.current?.end(ending, done) ?? notOpened.current);
      if (kept.kind === 'kept') flagRunning(false);
      else failed(kept);
      return kept;
    },
    beginAgain: useCallback(() => {
      show(notBegun(wanted.current.plan, wanted.current.session));
      setStatus({ kind: 'here' });
    }, []),
  };
}

function notBegun(plan: Json, session: FloorSession): Current {
  return { id: freshId(), plan, startedAt: null, session, events: [] };
}

interface ReadLink {
  readonly plan: { readonly plan: Json; readonly session: FloorSession } | null;
  readonly notice: string | null;
}

/** The plan that the address carries, laid out; the page's own one where it carries none. */
async function readLink(): Promise<ReadLink> {
  const link = await decodePlan(location.hash);
  if (link.kind === 'damaged' || link.kind === 'newer') {
    return { plan: null, notice: words.link[link.kind] };
  }
  if (link.kind === 'nothing') return { plan: null, notice: null };
  const plan = link.kind === 'example' ? examples[link.id] : link.draft;
  const { openPlan } = await fetchDesk();
  const opened = openPlan(plan);
  if (opened.kind === 'wrong') return { plan: null, notice: words.link.wrong(opened.message) };
  return { plan: { plan, session: opened.session }, notice: null };
}
