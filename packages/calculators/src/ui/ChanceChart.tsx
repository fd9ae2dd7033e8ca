import { formatPercent } from './formatPercent.ts';

/** One load and its chance. */
export interface ChancePoint {
  readonly value: number;
  readonly label: string;
  /** Between 0 and 1. */
  readonly chance: number;
  readonly isBest: boolean;
}

interface ChanceChartProps {
  /** In order of load; at least one. */
  readonly points: readonly ChancePoint[];
  readonly says: string;
}

const LEFT = 34;
const RIGHT = 352;
const TOP = 22;
const BASE = 168;
/** Least distance of two labels under the chart. */
const APART = 44;

/** The chance of each load as a column at its place on a scale of loads. */
export function ChanceChart({ points, says }: ChanceChartProps) {
  const first = points[0]?.value ?? 0;
  const span = Math.max((points.at(-1)?.value ?? first) - first, 1e-9);
  const isOne = points.length < 2;
  const x = (value: number) =>
    isOne ? (LEFT + RIGHT) / 2 : LEFT + 16 + ((value - first) / span) * (RIGHT - LEFT - 32);
  const y = (chance: number) => BASE - chance * (BASE - TOP);
  const gaps = points.slice(1).map((point, at) => x(point.value) - x(points[at]?.value ?? 0));
  const width = Math.min(18, Math.max(1.5, Math.min(...gaps, 18) * 0.7));
  return (
    <svg class="wl-chance" viewBox="0 0 360 196" role="img" aria-label={says}>
      {[0, 0.25, 0.5, 0.75, 1].map((chance) => (
        <g key={chance}>
          <path class="wl-grid" d={`M${LEFT} ${y(chance)}H${RIGHT}`} />
          <text class="wl-tick" x={LEFT - 5} y={y(chance)} dy="0.35em" text-anchor="end">
            {chance * 100}
          </text>
        </g>
      ))}
      <text class="wl-tick" x={LEFT - 5} y={12} text-anchor="end">
        %
      </text>
      {points.map(({ value, chance, isBest }) => (
        <rect
          key={value}
          class="wl-column"
          data-best={isBest ? 'true' : undefined}
          x={round(x(value) - width / 2)}
          y={round(y(chance))}
          width={round(width)}
          height={round(Math.max(0.75, BASE - y(chance)))}
        />
      ))}
      {points
        .filter(({ isBest }) => isBest)
        .map(({ value, chance }) => (
          <text
            key={value}
            class="wl-best"
            x={round(x(value))}
            y={round(y(chance) - 6)}
            text-anchor="middle"
          >
            {formatPercent(chance)}
          </text>
        ))}
      {labelled(points, x).map(({ value, label, isBest }) => (
        <text
          key={value}
          class={isBest ? 'wl-best' : 'wl-tick'}
          x={round(x(value))}
          y={BASE + 18}
          text-anchor="middle"
        >
          {label}
        </text>
      ))}
    </svg>
  );
}

/** The points whose labels fit side by side: the best one, then from both ends inwards. */
function labelled(points: readonly ChancePoint[], x: (value: number) => number) {
  const ends = [points[0], points.at(-1)].flatMap((end) => (end ? [end] : []));
  const kept: ChancePoint[] = [];
  for (const point of [...points.filter(({ isBest }) => isBest), ...ends, ...points]) {
    const isFree = kept.every(({ value }) => Math.abs(x(value) - x(point.value)) >= APART);
    if (isFree) kept.push(point);
  }
  return kept;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
