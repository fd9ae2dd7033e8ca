import { startLiveSet } from '@windlass/core/extension';
import { loadFromValue } from '@windlass/core/load';
import { useCallback, useRef, useState } from 'preact/hooks';
import { loadWords } from '../../shared/loadWords.ts';
import { formatNumber } from '../../ui/formatNumber.ts';
import { useAwake } from '../../ui/useAwake.ts';
import type { ChainResult } from '../compute.ts';
import { said } from '../words.ts';
import { secondsNow } from './clock.ts';
import { endAnswers, LiveAsk, signAnswers } from './LiveAsk.tsx';
import { LiveMoves } from './LiveMoves.tsx';
import { LiveNow } from './LiveNow.tsx';
import { LiveRecord } from './LiveRecord.tsx';
import { live } from './liveWords.ts';
import { isUnderWay, type RunningSet, savedSet, saveSet } from './savedSet.ts';
import { type Said, useLiveSet } from './useLiveSet.ts';

export interface LiveDialogProps {
  readonly result: ChainResult;
  readonly tempo: string;
  readonly onClose: () => void;
}

/** A set followed step by step over the whole screen. Closing it leaves the set running. */
export function LiveDialog({ result, tempo, onClose }: LiveDialogProps) {
  const fresh = (): RunningSet => ({
    set: startLiveSet(result.live),
    origin: secondsNow(),
    name: result.exercise.name,
    tempo,
  });
  const control = useLiveSet(() => savedSet(sessionStorage) ?? fresh());
  const [asking, setAsking] = useState<'end' | 'sign' | null>(null);
  const dialog = useRef<HTMLDialogElement>(null);
  // As a ref it opens before the effects of what stands in it, which could not focus it closed.
  const open = useCallback((element: HTMLDialogElement | null) => {
    dialog.current = element;
    element?.showModal();
  }, []);
  useAwake(true);

  const { running, standing, now } = control;
  const { load, stages } = running.set.plan;
  const close = () => {
    if (!isUnderWay(running)) saveSet(null, sessionStorage);
    onClose();
  };
  const answer = (told: Said) => {
    control.say(told);
    setAsking(null);
  };
  return (
    <dialog class="wl-live" aria-label={live.region(running.name)} ref={open} onClose={close}>
      <div class="wl-live-head">
        <p>
          <strong>{running.name}</strong>, {loadWords(loadFromValue(load), load.unit)}
          <span class="wl-row-note">
            {standing.startedAt !== null &&
              !standing.end &&
              live.setTime(formatNumber(now - standing.startedAt, 0))}
          </span>
        </p>
        <button type="button" class="wl-button" onClick={() => dialog.current?.close()}>
          {live.leave}
        </button>
      </div>
      <ol class="wl-live-stages">
        {stages.map(({ kind }, place) => (
          <li key={place} aria-current={place === Math.max(0, standing.stage) ? 'step' : undefined}>
            {said.stageNames[kind]}
          </li>
        ))}
      </ol>
      {standing.end && <LiveRecord running={running} rules={result.stopRules} />}
      {!standing.end && asking === null && <LiveNow control={control} />}
      {asking === null ? (
        <LiveMoves
          control={control}
          onEnd={() => setAsking('end')}
          onSign={() => setAsking('sign')}
        />
      ) : (
        <LiveAsk
          question={asking === 'end' ? live.howEnded : live.whichSign}
          answers={
            asking === 'end' ? endAnswers(isOpeningLift(control)) : signAnswers(result.stopRules)
          }
          onAnswer={answer}
          onBack={() => setAsking(null)}
        />
      )}
      {standing.end && (
        <button type="button" class="wl-button" onClick={() => control.begin(fresh())}>
          {live.again}
        </button>
      )}
    </dialog>
  );
}

function isOpeningLift({ standing }: ReturnType<typeof useLiveSet>): boolean {
  return standing.stage === 0 && standing.phase === 'lifting';
}
