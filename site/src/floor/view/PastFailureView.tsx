import {
  chainWords,
  endAnswers,
  LiveAsk,
  LiveMoves,
  LiveNow,
  type LiveSetControl,
  liveWords,
  signAnswers,
} from '@windlass/calculators/live';
import {
  advanceLiveSet,
  dueStop,
  type LiveSet,
  type LiveSetPlan,
  liveStanding,
} from '@windlass/core/extension';
import { loadValue } from '@windlass/core/load';
import { formatTempo } from '@windlass/core/tempo';
import { useEffect, useState } from 'preact/hooks';
import { useLiveSounds } from '../count/useLiveSounds.ts';
import { wallNow } from '../count/wallClock.ts';
import { pastFailureRecord } from '../log/pastFailureRecord.ts';
import type { FloorHappening } from '../run/FloorEvent.ts';
import type { FloorSession } from '../session/FloorSession.ts';
import { stepLoad } from '../session/stepLoad.ts';
import { useFloor, useStep } from './FloorContext.ts';
import { SetLine } from './SetLine.tsx';
import { useNow } from './useNow.ts';

/** A stop that is due is heeded within so many seconds; after a longer wait the page was away. */
const HEEDED_SECONDS = 10;

/** A set that goes on past failure: every stage by its clock, until the chain or a sign ends it. */
export function PastFailureView({ plan }: { readonly plan: LiveSetPlan }) {
  const { session, state, effective, say, add, settings, audio } = useFloor();
  const here = useStep();
  const [asking, setAsking] = useState<'end' | 'sign' | null>(null);
  const wall = useNow('seconds');
  const startsAt = state.running?.startsAt ?? wall;
  const undone = effective.undone[0]?.[effective.events.length];
  const load = stepLoad(session, state, state.step);
  const set: LiveSet = {
    plan: load ? { ...plan, load: loadValue(load.shown, session.unit) } : plan,
    log: state.live,
    undone: undone?.kind === 'live' ? [undone.event] : [],
  };
  const standing = liveStanding(set);
  const clock = () => Math.max(standing.lastAt, (wallNow() - startsAt) / 1000);
  const now = Math.max(standing.lastAt, (wall - startsAt) / 1000);
  const due = dueStop(set, now);
  useLiveSounds(set, standing, startsAt, here?.lift, settings.sound ? audio : null);
  useEffect(() => {
    // Ended by the last thing that was written before the tab was gone.
    const at = startsAt + standing.lastAt * 1000;
    add(endOf(set, session.stopRules, state.step).map((one) => ({ ...one, at })));
  }, []);
  if (!here) return null;

  const tell: LiveSetControl['say'] = (said) => {
    const latest = due ? due.atSeconds + HEEDED_SECONDS : Number.POSITIVE_INFINITY;
    const event = { ...said, atSeconds: Math.min(clock(), latest) };
    const next = advanceLiveSet(set, event).set;
    setAsking(null);
    say({ kind: 'live', event }, ...endOf(next, session.stopRules, state.step));
  };
  const control: LiveSetControl = {
    running: {
      set,
      origin: startsAt / 1000,
      name: here.lift.name,
      tempo: formatTempo(here.lift.tempo),
    },
    standing,
    now,
    due,
    say: tell,
    undo: () => say({ kind: 'undone' }),
    redo: () => say({ kind: 'redone' }),
    begin: () => {},
  };
  return (
    <>
      <div class="floor-set floor-past">
        <SetLine />
        <ol class="wl-live-stages">
          {plan.stages.map(({ kind }, place) => (
            <li
              key={place}
              aria-current={place === Math.max(0, standing.stage) ? 'step' : undefined}
            >
              {chainWords.stageNames[kind]}
            </li>
          ))}
        </ol>
        {asking === null && <LiveNow control={control} />}
      </div>
      <div class="floor-actions">
        {asking === null ? (
          <LiveMoves
            control={control}
            onEnd={() => setAsking('end')}
            onSign={() => setAsking('sign')}
          />
        ) : (
          <LiveAsk
            question={asking === 'end' ? liveWords.howEnded : liveWords.whichSign}
            answers={asking === 'end' ? endAnswers(false) : signAnswers(session.stopRules)}
            onAnswer={tell}
            onBack={() => setAsking(null)}
          />
        )}
      </div>
    </>
  );
}

/** What follows when a live set is over: its record, and the sign that ended it; nothing before. */
function endOf(
  set: LiveSet,
  stopRules: FloorSession['stopRules'],
  step: number,
): readonly FloorHappening[] {
  const record = pastFailureRecord(set);
  if (!record) return [];
  const { end } = liveStanding(set);
  const rule = stopRules.find(({ id }) => end?.by === 'stop-rule' && id === end.rule);
  const over = { kind: 'live-over', record } as const;
  return rule ? [over, { kind: 'sign', rule: rule.id, ends: rule.ends, step }] : [over];
}
