import { words } from '../words.ts';
import { formatNumber } from './formatNumber.ts';

/** Capacity at a moment, with how sure that is. All between 0 and 1. */
export interface CapacityBandPoint {
  readonly seconds: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** What a kind of work asks of the capacity, as a band across the chart. */
export interface CapacityBandLine {
  readonly label: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

interface CapacityChartProps {
  readonly points: readonly CapacityBandPoint[];
  readonly lines: readonly CapacityBandLine[];
  readonly says: string;
}

const LEFT = 38;
const RIGHT = 352;
const TOP = 12;
const BASE = 168;

/** Capacity over the seconds of a set or a session, falling towards what the load asks for. */
export function CapacityChart({ points, lines, says }: CapacityChartProps) {
  const end = Math.max(points.at(-1)?.seconds ?? 0, 1);
  const lowest = Math.min(...points.map(({ low }) => low), ...lines.map(({ low }) => low));
  const floor = Math.min(0.9, Math.max(0, Math.floor((lowest - 0.02) * 10) / 10));
  const x = (seconds: number) => round(LEFT + (seconds / end) * (RIGHT - LEFT));
  const y = (capacity: number) =>
    round(BASE - ((Math.max(floor, capacity) - floor) / (1 - floor)) * (BASE - TOP));
  const path = (of: 'low' | 'likely' | 'high', way: readonly CapacityBandPoint[]) =>
    way.map((point) => `${x(point.seconds)} ${y(point[of])}`).join('L');
  return (
    <svg class="wl-capacity" viewBox="0 0 360 200" role="img" aria-label={says}>
      {ticks(floor).map((capacity) => (
        <g key={capacity}>
          <path class="wl-grid" d={`M${LEFT} ${y(capacity)}H${RIGHT}`} />
          <text class="wl-tick" x={LEFT - 5} y={y(capacity)} dy="0.35em" text-anchor="end">
            {words.chance.percent(formatNumber(capacity * 100, 0))}
          </text>
        </g>
      ))}
      {lines.map(({ label, low, likely, high }) => (
        <g key={label}>
          <rect
            class="wl-line-band"
            x={LEFT}
            y={y(high)}
            width={RIGHT - LEFT}
            height={round(Math.max(1, y(low) - y(high)))}
          />
          <path class="wl-line" d={`M${LEFT} ${y(likely)}H${RIGHT}`} />
          <text class="wl-line-label" x={LEFT + 6} y={y(likely)} dy="1.25em">
            {label}
          </text>
        </g>
      ))}
      <path
        class="wl-capacity-band"
        d={`M${path('high', points)}L${path('low', points.toReversed())}Z`}
      />
      <path class="wl-capacity-line" d={`M${path('likely', points)}`} />
      {[0, 0.5, 1].map((share) => (
        <text
          key={share}
          class="wl-tick"
          x={x(end * share)}
          y={BASE + 18}
          text-anchor={share === 0 ? 'start' : share === 1 ? 'end' : 'middle'}
        >
          {timeWords(end * share)}
        </text>
      ))}
    </svg>
  );
}

function timeWords(seconds: number): string {
  return seconds < 120
    ? words.time.seconds(formatNumber(seconds, 0))
    : words.time.minutes(formatNumber(seconds / 60, 1));
}

function ticks(floor: number): readonly number[] {
  return [1, (1 + floor) / 2, floor];
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
