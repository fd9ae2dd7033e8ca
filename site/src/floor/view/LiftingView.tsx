import { chainWords } from '@windlass/calculators/live';
import { phasesOfRep } from '@windlass/core/tempo';
import { type CountNow, countAt } from '../count/countAt.ts';
import type { RunningSet } from '../run/FloorState.ts';
import { countedTo } from '../session/countedTo.ts';
import { words } from '../words.ts';
import { BottomRow } from './BottomRow.tsx';
import { useFloor, useStep } from './FloorContext.ts';
import { Primary } from './Primary.tsx';
import { RepDial } from './RepDial.tsx';
import { SetLine } from './SetLine.tsx';
import { useNow } from './useNow.ts';

/** A set while it is done: the repetition, its phase now and next, and every way it can end. */
export function LiftingView({ onCountOn }: { readonly onCountOn: () => void }) {
  const { state, say, settings, set } = useFloor();
  const here = useStep();
  const { running } = state;
  const now = useNow(running?.count ? (wantsLessMotion() ? 'seconds' : 'frames') : 'nothing');
  if (!here || !running) return null;
  const { step, lift } = here;
  const phases = phasesOfRep(lift.tempo, { startsWith: lift.startsWith });
  const most = countedTo(step, lift) - (running.count?.repsBefore ?? 0);
  const count = running.count && countAt(phases, now - running.count.startsAt, most);
  const face = faceOf(count, running, settings.counted);
  const isHeld = running.count === null;
  const after = state.chains.get(state.step)?.stages[1];
  return (
    <>
      <div class="floor-set floor-counting" data-kind={count?.kind ?? 'held'}>
        <SetLine />
        <div class="dial-room">
          <RepDial phases={phases} now={count} figure={face.figure} unit={face.unit} />
        </div>
        <p class="floor-phase">
          {face.phase}
          {face.second !== '' && <strong>{face.second}</strong>}
        </p>
        <p class="floor-next">{face.next}</p>
        <p class="floor-done-reps" role="status">
          {words.lifting.repsDone(running.reps)}
          {isInWindow(running.reps, lift.window) && `, ${words.lifting.inWindow}`}
        </p>
        <Correct isHeld={isHeld} onCountOn={onCountOn} />
      </div>
      <div class="floor-actions">
        <div class="floor-ends">
          {step.kind !== 'try' && (
            <button type="button" class="floor-second" onClick={() => say({ kind: 'failed' })}>
              {words.lifting.failed}
              <small>
                {after ? words.carryOn.chosen(chainWords.stage(after)) : words.lifting.failedHint}
              </small>
            </button>
          )}
          <Primary
            name={words.lifting.stop}
            hint={words.lifting.stopHint}
            focusOn={running.begunAt}
            onPress={() => say({ kind: 'stopped' })}
          />
        </div>
        <BottomRow>
          <button type="button" class="wl-button" onClick={() => set({ sound: !settings.sound })}>
            {settings.sound ? words.lifting.mute : words.lifting.unmute}
          </button>
        </BottomRow>
      </div>
    </>
  );
}

function wantsLessMotion(): boolean {
  return matchMedia('(prefers-reduced-motion: reduce)').matches;
}

/** The count put right by one, and held; without a count by tempo each repetition is said here. */
function Correct({
  isHeld,
  onCountOn,
}: {
  readonly isHeld: boolean;
  readonly onCountOn: () => void;
}) {
  const { state, settings, say } = useFloor();
  const { lifting } = words;
  const isByHand = isHeld && !settings.counted;
  const oneMore = () => say({ kind: 'rep', by: 'hand' });
  return (
    <div class="floor-correct" data-by-hand={isByHand ? 'true' : undefined}>
      <button
        type="button"
        class="wl-button"
        aria-label={lifting.less}
        disabled={state.running?.reps === 0}
        onClick={() => say({ kind: 'rep-less' })}
      >
        −1
      </button>
      {isByHand ? (
        <button type="button" class="wl-button" onClick={oneMore}>
          {lifting.repDone}
        </button>
      ) : (
        <>
          <button
            type="button"
            class="wl-button"
            onClick={() => (isHeld ? onCountOn() : say({ kind: 'held' }))}
          >
            {isHeld ? lifting.on : lifting.hold}
          </button>
          <button type="button" class="wl-button" aria-label={lifting.more} onClick={oneMore}>
            +1
          </button>
        </>
      )}
    </div>
  );
}

function isInWindow(
  reps: number,
  { minReps, maxReps }: { minReps: number; maxReps: number },
): boolean {
  return reps >= minReps && reps <= maxReps;
}

interface Face {
  readonly figure: string;
  readonly unit: string;
  readonly phase: string;
  /** Seconds that the phase still has, counted down. */
  readonly second: string;
  readonly next: string;
}

function faceOf(count: CountNow | null, { reps }: RunningSet, isCounted: boolean): Face {
  const { lifting } = words;
  if (count === null || count.kind === 'over') {
    const still = isCounted ? lifting.held : lifting.byHand;
    const phase = count === null ? still : lifting.over;
    return { figure: String(reps), unit: words.asking.done(reps), phase, second: '', next: '' };
  }
  if (count.kind === 'lead-in') {
    const second = String(Math.ceil(count.secondsLeft));
    return { figure: second, unit: lifting.ready, phase: lifting.ready, second: '', next: '' };
  }
  return {
    figure: String(reps + 1),
    unit: lifting.repUnit,
    phase: words.phases[count.phase.phase],
    second: String(Math.ceil(count.secondsLeft)),
    next: lifting.next(words.phase(count.next)),
  };
}
