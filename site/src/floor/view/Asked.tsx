import { chainWords } from '@windlass/calculators/live';
import { formatTempo, phasesOfRep } from '@windlass/core/tempo';
import { windowWords } from '../../planner/sheet/windowWords.ts';
import type { FloorLift, FloorStep } from '../session/FloorSession.ts';
import { isSameChain } from '../session/isSameChain.ts';
import { words } from '../words.ts';
import { useFloor, useStep } from './FloorContext.ts';

/** What is asked of the set: its count and what it will probably give, and its tempo. */
export function Asked() {
  const { state } = useFloor();
  const here = useStep();
  if (!here) return null;
  const { step, lift } = here;
  const chain = state.chains.get(state.step);
  const phases = phasesOfRep(lift.tempo, { startsWith: lift.startsWith });
  return (
    <div class="floor-asked">
      <p class="floor-figure">
        <strong>{countOf(step, lift)}</strong> <small>{words.asked.reps(step.reps)}</small>
      </p>
      <p class="floor-says">{saysOf(step, lift).join('. ')}</p>
      {chain && (
        <div class="floor-chain">
          <p>{words.carryOn.chosen(chain.stages.slice(1).map(chainWords.stage).join(', '))}</p>
          {step.chain && isSameChain(chain, step.chain.plan) && step.chain.needs.length > 0 && (
            <p>
              <small>{words.carryOn.needs(step.chain.needs.join(' '))}</small>
            </p>
          )}
        </div>
      )}
      {step.kind !== 'warm-up' && (
        <p class="floor-tempo">
          <span class="visually-hidden">{words.asked.tempo} </span>
          <strong>{formatTempo(lift.tempo)}</strong>{' '}
          <span>{phases.map(words.phase).join(', ')}</span>
        </p>
      )}
    </div>
  );
}

function countOf({ kind, reps }: FloorStep, { window }: FloorLift): string {
  return kind === 'work' ? windowWords(window) : String(reps);
}

function saysOf({ kind, expected, isEachSide }: FloorStep, lift: FloorLift): readonly string[] {
  const { asked } = words;
  if (kind === 'warm-up') return isEachSide ? [words.eachSide, asked.warmUp] : [asked.warmUp];
  if (kind === 'try') return [asked.stopWith(lift.repsInReserve)];
  const window = windowWords(lift.window);
  const end =
    lift.repsInReserve > 0 ? asked.endIn(window, lift.repsInReserve) : asked.window(window);
  if (!expected) return [end];
  const { low, high, level } = expected;
  return [end, asked.likely(Math.round(low), Math.round(high), Math.round(level * 10))];
}
