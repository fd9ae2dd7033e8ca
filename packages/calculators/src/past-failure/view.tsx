import type { CapacityTrace } from '@windlass/core/capacity';
import type { StageForecast } from '@windlass/core/extension';
import { type CapacityCurvePoint, CapacityCurves } from '../ui/CapacityCurves.tsx';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import type { ChainResult } from './compute.ts';
import { LivePlace } from './LivePlace.tsx';
import { said } from './words.ts';

interface ChainViewProps {
  readonly result: ChainResult;
  readonly tempo: string;
}

/** The stages with how much of each, and capacity falling through what they ask for. */
export function ChainView({ result, tempo }: ChainViewProps) {
  const { forecast, trace, stages } = result;
  const kinds = stages.map(({ kind }) => kind);
  const shown = trace.lines.filter(({ id }) => id === 'lift' || kinds.includes(id));
  const end = trace.likely.points.at(-1) ?? { seconds: 0, capacity: 1 };
  return (
    <>
      <ol class="wl-stages" data-many={stages.length > 4 ? 'true' : undefined}>
        {forecast.stages.map((stage, place) => (
          <StageTile key={place} forecast={stage} />
        ))}
      </ol>
      <p class="wl-soft">{kinds.includes('lighter') ? said.chartLighter : said.chart}</p>
      <CapacityCurves
        low={trace.low.points}
        likely={trace.likely.points}
        high={trace.high.points}
        lines={shown.map(({ id, capacity }) => ({
          label: said.lines[id](formatPercent(capacity.likely)),
          ...capacity,
        }))}
        marks={firstCrossings(trace.likely)}
        says={said.drawing(
          forecast.stages.map(stageWords),
          formatNumber(end.seconds, 0),
          formatPercent(end.capacity),
        )}
      />
      <LivePlace result={result} tempo={tempo} />
    </>
  );
}

/** Where the likely curve first falls through each line. */
function firstCrossings({ crossings, points }: CapacityTrace): readonly CapacityCurvePoint[] {
  const falls = crossings.filter(({ direction }) => direction === 'down');
  return falls
    .filter(({ line }, at) => falls.findIndex((other) => other.line === line) === at)
    .map(({ seconds }) => ({ seconds, capacity: capacityAt(points, seconds) }));
}

function capacityAt(points: CapacityTrace['points'], seconds: number): number {
  const next = points.findIndex((point) => point.seconds >= seconds);
  const [from, to] = [points[Math.max(0, next - 1)], points[next]];
  if (!from || !to || to.seconds === from.seconds) return to?.capacity ?? 1;
  const part = (seconds - from.seconds) / (to.seconds - from.seconds);
  return from.capacity + part * (to.capacity - from.capacity);
}

function StageTile({ forecast }: { readonly forecast: StageForecast }) {
  const { stage } = forecast;
  const { low, likely, high } = amountOf(forecast);
  return (
    <li class="wl-stage">
      <span class="wl-stage-name">{said.stageNames[stage.kind]}</span>{' '}
      <span class="wl-stage-count">
        {formatNumber(likely, 0)} <span class="wl-stage-unit">{said.unit(stage)}</span>
      </span>{' '}
      <span class="wl-stage-span">{said.span(formatNumber(low, 0), formatNumber(high, 0))}</span>
    </li>
  );
}

/** Repetitions or lowerings; seconds of a hold. */
export function amountOf({ count, secondsUnderLoad }: StageForecast) {
  return count ?? secondsUnderLoad;
}

function stageWords(forecast: StageForecast): string {
  const { stage } = forecast;
  const count = formatNumber(amountOf(forecast).likely, 0);
  return said.stageSays(said.stageNames[stage.kind], count, said.unit(stage));
}
