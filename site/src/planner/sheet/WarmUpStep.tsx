import type { SheetStep } from '@windlass/core/session';
import type { RampStep } from '@windlass/core/warmup';
import { words } from '../words.ts';
import { durationWords } from './durationWords.ts';
import { numberAndUnit } from './numberAndUnit.ts';

interface WarmUpStepProps {
  readonly number: number;
  readonly sheet: SheetStep;
  readonly step: RampStep;
}

/** A warm-up set: load and count, what the hands do before it, and what is on then. */
export function WarmUpStep({ number, sheet, step }: WarmUpStepProps) {
  const { mark, number: value, unit } = numberAndUnit(sheet.load.words);
  const added = step.change.steps.filter(({ action }) => action === 'put-on').length;
  const isWhole = added === step.load.loading.pieces;
  const isBare = step.load.loading.kind === 'plates' && step.load.loading.pieces === 0;
  return (
    <li class="step">
      <p class="step-name">
        {words.lift.warmUp} {number}
      </p>
      <p class="step-do">
        <span class="step-number">
          {mark !== '' && <small>{mark}</small>}
          {value}
        </span>{' '}
        <small>{unit}</small> <span class="step-times">{words.lift.times(sheet.reps)}</span>
      </p>
      <div class="step-hands">
        <p>{isBare ? words.lift.bare : sheet.change}</p>
        {!isWhole && !isBare && <p class="step-loading">{words.lift.thenOn(sheet.load.loading)}</p>}
      </div>
      <p class="step-rest">{words.lift.rest(durationWords(sheet.restSeconds))}</p>
    </li>
  );
}
