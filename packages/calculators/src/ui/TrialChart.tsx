import { words } from '../words.ts';

/** One set of a search as a column. */
export interface TrialColumn {
  /** The load, without its unit. */
  readonly label: string;
  /** Share of the heaviest column, 0 to 1. */
  readonly height: number;
  readonly reps: number | null;
  /** How it felt, or what comes next. */
  readonly note: string;
  readonly isNext: boolean;
}

interface TrialChartProps {
  readonly columns: readonly TrialColumn[];
  /** Room for so many columns, so that nothing moves as sets are added. */
  readonly places: number;
  readonly says: string;
}

const WIDTH = 360;
const TOP = 24;
const BASE = 148;
const GAP = 10;

/** The sets of a search in the order they were done, and the next one; open places as outlines. */
export function TrialChart({ columns, places, says }: TrialChartProps) {
  const width = (WIDTH - GAP * (places - 1)) / places;
  const open = Array.from({ length: Math.max(0, places - columns.length) }, (_, at) => at);
  const left = (place: number) => place * (width + GAP);
  return (
    <svg class="wl-trials" viewBox={`0 0 ${WIDTH} 188`} role="img" aria-label={says}>
      {columns.map(({ label, height, reps, note, isNext }, place) => {
        const centre = left(place) + width / 2;
        const top = BASE - height * (BASE - TOP);
        return (
          <g key={place}>
            <rect
              class="wl-column"
              data-best={isNext ? 'true' : undefined}
              x={left(place)}
              y={top}
              width={width}
              height={BASE - top}
            />
            <text class="wl-best" x={centre} y={top - 6} text-anchor="middle">
              {label}
            </text>
            <text class="wl-reps" x={centre} y={BASE + 18} text-anchor="middle">
              {reps === null ? '' : words.ramp.times(reps)}
            </text>
            <text class="wl-tick" x={centre} y={BASE + 34} text-anchor="middle">
              {note}
            </text>
          </g>
        );
      })}
      {open.map((at) => (
        <path
          key={at}
          class="wl-open"
          d={`M${left(columns.length + at)} ${BASE - 24}h${width}v24h${-width}z`}
        />
      ))}
      <path class="wl-base" d={`M0 ${BASE}H${WIDTH}`} />
    </svg>
  );
}
