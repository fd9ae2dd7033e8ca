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
import { formatTempo } from '@windlass/core/tempo';
import { useState } from 'preact/hooks';
import { useLiveSounds } from '../count/useLiveSounds.ts';
import { wallNow } from '../count/wallClock.ts';
import { pastFailureRecord } from '../log/pastFailureRecord.ts';
import type { FloorHappening } from '../run/FloorEvent.ts';
import { useFloor, useStep } from './FloorContext.ts';
import { SetLine } from './SetLine.tsx';
import { useNow } from './useNow.ts';

/** A set that goes on past failure: every stage by its clock, until the chain or a sign ends it. */
export function PastFailureView({ plan }: { readonly plan: LiveSetPlan }) {
  const { session, state, effective, say, settings, audio } = useFloor();
  const here = useStep();
  const [asking, setAsking] = useState<'end' | 'sign' | null>(null);
  const wall = useNow('seconds');
  const startsAt = state.running?.startsAt ?? wall;
  const undone = effective.undone[0]?.at(-1);
  const set: LiveSet = {
    plan,
    log: state.live,
    undone: undone?.kind === 'live' ? [undone.event] : [],
  };
  const standing = liveStanding(set);
  const clock = () => Math.max(standing.lastAt, (wallNow() - startsAt) / 1000);
  useLiveSounds(set, standing, startsAt, here?.lift, settings.sound ? audio : null);
  if (!here) return null;

  const tell: LiveSetControl['say'] = (said) => {
    const event = { ...said, atSeconds: clock() };
    const next = advanceLiveSet(set, event).set;
    const record = pastFailureRecord(next);
    const rule = said.kind === 'sign' && session.stopRules.find(({ id }) => id === said.rule);
    const what: FloorHappening[] = [{ kind: 'live', event }];
    if (record) what.push({ kind: 'live-over', record });
    if (rule) what.push({ kind: 'sign', rule: rule.id, ends: rule.ends });
    setAsking(null);
    say(...what);
  };
  const now = Math.max(standing.lastAt, (wall - startsAt) / 1000);
  const control: LiveSetControl = {
    running: {
      set,
      origin: startsAt / 1000,
      name: here.lift.name,
      tempo: formatTempo(here.lift.tempo),
    },
    standing,
    now,
    due: dueStop(set, now),
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
