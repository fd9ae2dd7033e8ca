import { lightWeek, topSets } from '@windlass/core/progress';
import { loadWords } from '../shared/loadWords.ts';
import { formatChance } from '../ui/formatChance.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import type { LogReviewResult } from './compute.ts';
import type { LogReviewInput } from './fields.ts';
import { said } from './words.ts';

interface NextPanelProps {
  readonly input: LogReviewInput;
  readonly result: LogReviewResult;
}

/** The next session in words: chances, the step after it, the way back after a break, a light week. */
export function NextPanel({ input: { show, window }, result }: NextPanelProps) {
  const { advice, question, loads } = result;
  const { chance, nextStep, bridges = [], comeback } = advice;
  const last = question.sessions.at(-1);
  const top = last && topSets(last);
  const light =
    last && top
      ? lightWeek({
          sets: Math.min(50, last.sets.length),
          load: top.load,
          reps: Math.max(1, top.fewest),
          loads,
        })
      : { kind: 'no-load' as const };
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.next}</h2>
      {chance && (
        <p>
          {said.chances(
            formatChance(chance.before),
            formatChance(chance.inside),
            formatChance(chance.beyond),
            window.low,
            window.high,
          )}
        </p>
      )}
      {nextStep && (
        <p>
          {said.nextStep(loadWords(nextStep.to.shown, show), formatNumber(nextStep.percent, 1))}
        </p>
      )}
      {bridges.length > 0 && (
        <ul class="wl-sources">
          {bridges.map(({ id, message }) => (
            <li key={id}>{message}</li>
          ))}
        </ul>
      )}
      {comeback && (
        <>
          <p>
            {said.kept(
              formatPercent(comeback.strengthKept.low),
              formatPercent(comeback.strengthKept.high),
              comeback.repsInReserve,
              formatPercent(comeback.setsShare),
            )}
          </p>
          <p>{said.weeks(comeback.weeks.map(({ shown }) => loadWords(shown, show)))}</p>
        </>
      )}
      {light.kind === 'light-week' && (
        <p>
          {said.lightWeek(
            light.sets,
            loadWords(light.load.shown, show),
            light.reps,
            formatNumber(light.percent, 0),
            light.repsInReserve,
          )}
        </p>
      )}
    </section>
  );
}
