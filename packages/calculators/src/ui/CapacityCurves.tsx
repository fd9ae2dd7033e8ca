import { words } from '../words.ts';
import { formatNumber } from './formatNumber.ts';
import { formatPercent } from './formatPercent.ts';

/** Capacity, between 0 and 1, at a moment. */
export interface CapacityCurvePoint {
  readonly seconds: number;
  readonly capacity: number;
}

/** What a kind of work asks of the capacity, as a band across the chart. */
export interface CapacityBandLine {
  readonly label: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

interface CapacityCurvesProps {
  readonly low: readonly CapacityCurvePoint[];
  readonly likely: readonly CapacityCurvePoint[];
  readonly high: readonly CapacityCurvePoint[];
  readonly lines: readonly CapacityBandLine[];
  /** Moments of the likely curve that matter. */
  readonly marks?: readonly CapacityCurvePoint[];
  readonly says: string;
}

const LEFT = 38;
const RIGHT = 352;
const TOP = 12;
const BASE = 168;
/** Height of a label. */
const LABEL = 13;

/**
 * Capacity over the seconds of a set, as the curves of who tires fast, the likely one and who
 * tires slowly: each as long as its set is, the band between them.
 */
export function CapacityCurves(props: CapacityCurvesProps) {
  const { low, likely, high, lines, marks = [], says } = props;
  const every = [...low, ...likely, ...high];
  const end = Math.max(...every.map(({ seconds }) => seconds), 1);
  const lowest = Math.min(
    ...every.map(({ capacity }) => capacity),
    ...lines.map((line) => line.low),
  );
  const floor = Math.min(0.9, Math.max(0, Math.floor((lowest - 0.02) * 10) / 10));
  const x = (seconds: number) => round(LEFT + (seconds / end) * (RIGHT - LEFT));
  const y = (capacity: number) =>
    round(BASE - ((Math.max(floor, capacity) - floor) / (1 - floor)) * (BASE - TOP));
  const path = (way: readonly CapacityCurvePoint[]) =>
    way.map(({ seconds, capacity }) => `${x(seconds)} ${y(capacity)}`).join('L');
  const labels = apart(lines.map((line) => y(line.likely)));
  return (
    <svg class="wl-capacity" viewBox="0 0 360 200" role="img" aria-label={says}>
      {ticks(floor).map((capacity) => (
        <g key={capacity}>
          <path class="wl-grid" d={`M${LEFT} ${y(capacity)}H${RIGHT}`} />
          <text class="wl-tick" x={LEFT - 5} y={y(capacity)} dy="0.35em" text-anchor="end">
            {formatPercent(capacity)}
          </text>
        </g>
      ))}
      {lines.map((line, place) => (
        <g key={line.label}>
          <rect
            class="wl-line-band"
            x={LEFT}
            y={y(line.high)}
            width={RIGHT - LEFT}
            height={round(Math.max(1, y(line.low) - y(line.high)))}
          />
          <path class="wl-line" d={`M${LEFT} ${y(line.likely)}H${RIGHT}`} />
          <text class="wl-line-label" x={LEFT + 6} y={labels[place]} dy="1.25em">
            {line.label}
          </text>
        </g>
      ))}
      <path class="wl-capacity-band" d={`M${path(high)}L${path(low.toReversed())}Z`} />
      <path class="wl-capacity-line" d={`M${path(likely)}`} />
      {marks.map(({ seconds, capacity }) => (
        <circle key={seconds} class="wl-mark-dot" cx={x(seconds)} cy={y(capacity)} r="4" />
      ))}
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

/** Places for labels below lines, none less than a line of text below another. */
function apart(places: readonly number[]): readonly number[] {
  const moved = [...places];
  const order = places.map((_, at) => at).toSorted((a, b) => (places[a] ?? 0) - (places[b] ?? 0));
  for (const [rank, at] of order.entries()) {
    const above = order[rank - 1];
    const least = above === undefined ? 0 : (moved[above] ?? 0) + LABEL;
    moved[at] = Math.max(moved[at] ?? 0, least);
  }
  return moved;
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
