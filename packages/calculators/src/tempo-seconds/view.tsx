import { CountArcs } from '../ui/CountArcs.tsx';
import { formatNumber } from '../ui/formatNumber.ts';
import { words } from '../words.ts';
import type { TempoInput, TempoResult } from './compute.ts';

interface TempoViewProps {
  readonly input: TempoInput;
  readonly result: TempoResult;
}

/** One repetition as a dial. */
export function TempoView({ result }: TempoViewProps) {
  const { phases, repSeconds } = result;
  const said = phases.map(
    ({ phase, seconds }) => `${words.phases[phase]} ${formatNumber(seconds)} s`,
  );
  return (
    <CountArcs
      phases={phases}
      says={`One rep, ${formatNumber(repSeconds)} s: ${said.join(', ')}.`}
    />
  );
}

/** Seconds under load, and the counts that fit the time goal. */
export function TempoDetails({ input, result }: TempoViewProps) {
  const { goal, reps } = input;
  const { setSeconds, underLoadSeconds, inGoal } = result;
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">In the set</h2>
      <table class="wl-table">
        <tbody>
          <tr>
            <th scope="row">Under load</th>
            <td class="wl-figure">{formatNumber(underLoadSeconds, 1)} s</td>
            <td>
              of {formatNumber(setSeconds, 1)} s, in {reps} {reps === 1 ? 'rep' : 'reps'}
            </td>
          </tr>
          <tr>
            <th scope="row">
              Inside {goal.low} to {goal.high} s
            </th>
            <GoalCells inGoal={inGoal} />
          </tr>
        </tbody>
      </table>
    </section>
  );
}

function GoalCells({ inGoal }: Pick<TempoResult, 'inGoal'>) {
  if (inGoal.kind === 'fits') {
    const { fewest, most } = inGoal;
    return (
      <>
        <td class="wl-figure">
          {fewest.reps === most.reps ? fewest.reps : `${fewest.reps} to ${most.reps}`} reps
        </td>
        <td>
          {formatNumber(fewest.seconds, 1)} s
          {fewest.reps === most.reps ? '' : ` to ${formatNumber(most.seconds, 1)} s`}
        </td>
      </>
    );
  }
  const { shorter, longer } = inGoal;
  return (
    <>
      <td class="wl-figure">no count fits</td>
      <td>
        {shorter.reps} reps take {formatNumber(shorter.seconds, 1)} s, {longer.reps} take{' '}
        {formatNumber(longer.seconds, 1)} s
      </td>
    </>
  );
}
