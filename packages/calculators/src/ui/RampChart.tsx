import { words } from '../words.ts';

/** One set of a ramp as a column. */
export interface RampColumn {
  /** The load, without its unit. */
  readonly label: string;
  /** Share of the heaviest column, 0 to 1. */
  readonly height: number;
  /** Repetitions; `null` for the work set itself. */
  readonly reps: number | null;
}

interface RampChartProps {
  readonly columns: readonly RampColumn[];
  readonly says: string;
}

const WIDTH = 360;
const TOP = 24;
const BASE = 164;
const GAP = 6;

/** The sets of a ramp as stairs up to the work load, each with its load and repetitions. */
export function RampChart({ columns, says }: RampChartProps) {
  const width = Math.min(72, (WIDTH - GAP * (columns.length - 1)) / Math.max(columns.length, 1));
  return (
    <svg class="wl-ramp" viewBox={`0 0 ${WIDTH} 188`} role="img" aria-label={says}>
      {columns.map(({ label, height, reps }, place) => {
        const left = place * (width + GAP);
        const centre = left + width / 2;
        const top = BASE - height * (BASE - TOP);
        return (
          <g key={left}>
            <rect
              class="wl-column"
              data-best={reps === null ? 'true' : undefined}
              x={left}
              y={top}
              width={width}
              height={BASE - top}
            />
            <text class="wl-best" x={centre} y={top - 6} text-anchor="middle">
              {label}
            </text>
            <text class="wl-reps" x={centre} y={BASE + 18} text-anchor="middle">
              {reps === null ? words.ramp.work : words.ramp.times(reps)}
            </text>
          </g>
        );
      })}
      <path class="wl-base" d={`M0 ${BASE}H${WIDTH}`} />
    </svg>
  );
}
