import type { StopRule } from '@windlass/core/safety';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { live } from './liveWords.ts';
import type { Said } from './useLiveSet.ts';

interface LiveAskProps {
  readonly question: string;
  readonly answers: readonly { readonly id: string; readonly label: string; readonly said: Said }[];
  readonly onAnswer: (said: Said) => void;
  readonly onBack: () => void;
}

/** One question with its answers as large buttons, and a way back. */
export function LiveAsk({ question, answers, onAnswer, onBack }: LiveAskProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus(), []);
  return (
    <div class="wl-live-ask">
      <h2 class="wl-heading" tabIndex={-1} ref={heading}>
        {question}
      </h2>
      {answers.map(({ id, label, said }) => (
        <button key={id} type="button" class="wl-button" onClick={() => onAnswer(said)}>
          {label}
        </button>
      ))}
      <button type="button" class="wl-button wl-live-back" onClick={onBack}>
        {live.back}
      </button>
    </div>
  );
}

/** How a set ends by choice; reps left are asked for only while the opening lift is on. */
export function endAnswers(isOpeningLift: boolean): LiveAskProps['answers'] {
  const left = isOpeningLift ? [1, 2, 3, 4, 5] : [];
  return [
    {
      id: 'target',
      label: live.targetReached,
      said: { kind: 'stopped', reason: 'target-reached' },
    },
    ...left.map((repsLeft) => ({
      id: String(repsLeft),
      label: live.repsLeft(repsLeft),
      said: { kind: 'stopped', reason: 'chosen', repsLeft } as const,
    })),
    { id: 'chosen', label: live.justStopped, said: { kind: 'stopped', reason: 'chosen' } },
  ];
}

/** The signs that end a set while it is done. */
export function signAnswers(rules: readonly StopRule[]): LiveAskProps['answers'] {
  return rules
    .filter(({ when }) => when === 'during')
    .map(({ id, sign }) => ({ id, label: sign, said: { kind: 'sign', rule: id } }));
}
