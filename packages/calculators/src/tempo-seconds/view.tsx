import { CountArcs } from '../ui/CountArcs.tsx';
import { words } from '../words.ts';
import type { TempoInput, TempoResult } from './compute.ts';
import { said } from './words.ts';

interface TempoViewProps {
  readonly input: TempoInput;
  readonly result: TempoResult;
}

/** One repetition as a dial. */
export function TempoView({ result }: TempoViewProps) {
  const { phases, repSeconds } = result;
  const named = phases.map(({ phase, seconds }) => said.phase(words.phases[phase], seconds));
  return <CountArcs phases={phases} says={said.drawing(repSeconds, named)} />;
}

/** Seconds under load, and the counts that fit the time goal. */
export function TempoDetails({ input, result }: TempoViewProps) {
  const { goal, reps } = input;
  const { setSeconds, underLoadSeconds, inGoal } = result;
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.inTheSet}</h2>
      <table class="wl-table">
        <tbody>
          <tr>
            <th scope="row">{said.underLoad}</th>
            <td class="wl-figure">{said.seconds(underLoadSeconds)}</td>
            <td>{said.ofSet(setSeconds, reps)}</td>
          </tr>
          <tr>
            <th scope="row">{said.inside(goal.low, goal.high)}</th>
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
        <td class="wl-figure">{said.counts(fewest.reps, most.reps)}</td>
        <td>{said.spans(fewest.seconds, most.seconds)}</td>
      </>
    );
  }
  const { shorter, longer } = inGoal;
  return (
    <>
      <td class="wl-figure">{said.noneFits}</td>
      <td>{said.around([shorter.reps, shorter.seconds], [longer.reps, longer.seconds])}</td>
    </>
  );
}
