import { formatNumber } from './formatNumber.ts';
import { roundTicks } from './roundTicks.ts';

/** A measured value on a day. */
export interface TrendDot {
  readonly day: number;
  readonly value: number;
}

/** The fitted line on a day. */
export interface TrendSpan {
  readonly day: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

interface TrendChartProps {
  /** At least one, in order of days. */
  readonly dots: readonly TrendDot[];
  /** The trend, over the days that it was fitted to. */
  readonly line: readonly TrendSpan[];
  /** Names of days, in order. */
  readonly days: readonly { readonly day: number; readonly name: string }[];
  readonly says: string;
}

const LEFT = 40;
const RIGHT = 352;
const TOP = 10;
const BASE = 186;
/** Least distance of two names of days. */
const APART = 58;

/** Values over days, and the line through the latest of them as a band. */
export function TrendChart({ dots, line, days, says }: TrendChartProps) {
  const values = [
    ...dots.map(({ value }) => value),
    ...line.flatMap(({ low, high }) => [low, high]),
  ];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const margin = Math.max((most - least) * 0.08, most * 0.01);
  const [bottom, top] = [least - margin, most + margin];
  const first = dots[0]?.day ?? 0;
  const span = Math.max(1, (dots.at(-1)?.day ?? first) - first);
  const x = (day: number) => round(LEFT + 6 + ((day - first) / span) * (RIGHT - LEFT - 12));
  const y = (value: number) => round(BASE - ((value - bottom) / (top - bottom)) * (BASE - TOP));
  const along = (of: 'low' | 'likely' | 'high', spans = line) =>
    spans.map((one) => `${x(one.day)} ${y(one[of])}`).join('L');
  return (
    <svg class="wl-trend" viewBox="0 0 360 212" role="img" aria-label={says}>
      {roundTicks(bottom, top).map((value) => (
        <g key={value}>
          <path class="wl-grid" d={`M${LEFT} ${y(value)}H${RIGHT}`} />
          <text class="wl-tick" x={LEFT - 6} y={y(value)} dy="0.35em" text-anchor="end">
            {formatNumber(value, 1)}
          </text>
        </g>
      ))}
      {line.length > 1 && (
        <>
          <path
            class="wl-capacity-band"
            d={`M${along('low')}L${along('high', line.toReversed())}Z`}
          />
          <path class="wl-capacity-line" d={`M${along('likely')}`} />
        </>
      )}
      {dots.map(({ day, value }) => (
        <circle key={day} class="wl-mark-dot" cx={x(day)} cy={y(value)} r="3.5" />
      ))}
      {apart(days, x).map(({ day, name }) => (
        <text
          key={day}
          class="wl-tick"
          x={x(day)}
          y={BASE + 18}
          text-anchor={x(day) < LEFT + 20 ? 'start' : x(day) > RIGHT - 20 ? 'end' : 'middle'}
        >
          {name}
        </text>
      ))}
    </svg>
  );
}

/** The names that fit side by side: the last, the first, then from the left. */
function apart(days: TrendChartProps['days'], x: (day: number) => number) {
  const kept: (typeof days)[number][] = [];
  for (const one of [...days.slice(-1), ...days]) {
    if (kept.every(({ day }) => Math.abs(x(day) - x(one.day)) >= APART)) kept.push(one);
  }
  return kept;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
