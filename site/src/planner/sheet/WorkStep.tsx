import type { SheetLift, SheetSet } from '@windlass/core/session';
import { words } from '../words.ts';
import { durationWords } from './durationWords.ts';
import { RepRuler } from './RepRuler.tsx';
import { WriteIn } from './WriteIn.tsx';
import { windowWords } from './windowWords.ts';

/** What comes after a set: its rest, or the other lift of a round. */
function restAfter({ join, restSeconds }: SheetLift, isLast: boolean): string {
  if (join?.place === 'first') return words.lift.onTo(durationWords(join.transitionSeconds));
  if (isLast) return '';
  return join?.waitSeconds === undefined
    ? words.lift.rest(durationWords(restSeconds))
    : words.lift.nextRound(durationWords(join.waitSeconds));
}

interface WorkStepProps {
  readonly number: number;
  readonly set: SheetSet;
  readonly lift: SheetLift;
  /** Both sides are done, one after the other. */
  readonly isOneSided: boolean;
  /** Where the scale of repetitions ends. */
  readonly most: number;
}

/** A work set: the likely count, and on a scale where it will end and where it is wanted to. */
export function WorkStep({ number, set, lift, isOneSided, most }: WorkStepProps) {
  const { low, likely, high, level } = set.reps;
  const window = windowWords(lift.window);
  const between = words.lift.between(low, high, Math.round(level * 10));
  const isLast = number === lift.sets.length;
  return (
    <li class="step step-work">
      <p class="step-name">
        {words.lift.work} {number}
      </p>
      <p class="step-do">
        <span class="step-number">{likely}</span> <small>{words.lift.repsUnit(likely)}</small>
        {isOneSided && <small class="step-side">{words.lift.eachSide}</small>}
      </p>
      <div class="step-hands">
        {number === 1 && lift.changeToWork !== '' && <p>{lift.changeToWork}</p>}
        <RepRuler
          reps={set.reps}
          window={lift.window}
          most={most}
          says={words.lift.ruler(between, window)}
        />
        <p class="step-band">
          <span>{between}</span>
          <span>{words.lift.inside(Math.round(set.chance * 100), window)}</span>
        </p>
        <WriteIn />
      </div>
      <p class="step-rest">{restAfter(lift, isLast)}</p>
    </li>
  );
}
