import { formatPercent } from './formatPercent.ts';

/** One muscle and how much of it is meant, as a share from 0 to 1. */
export interface MuscleBar {
  readonly name: string;
  /** What stands small beside the name; nothing when it is left out. */
  readonly note?: string;
  readonly share: number;
  /** A mark to compare with, as a share. */
  readonly mark?: number;
}

interface MuscleChartProps {
  readonly bars: readonly MuscleBar[];
  readonly says: string;
}

const HEIGHT = 236;
const MOST_ROW = 46;
const MOST_ROWS = 7;
const LEFT = 0;
const RIGHT = 312;

/** Muscles one below the other, each with a bar and its figure; always the same height. */
export function MuscleChart({ bars, says }: MuscleChartProps) {
  const shown = bars.slice(0, MOST_ROWS);
  const row = Math.min(MOST_ROW, HEIGHT / Math.max(1, shown.length));
  const x = (share: number) => Math.round((LEFT + share * (RIGHT - LEFT)) * 100) / 100;
  return (
    <svg class="wl-muscles" viewBox={`0 0 360 ${HEIGHT}`} role="img" aria-label={says}>
      {shown.map(({ name, note, share, mark }, place) => {
        const y = Math.round(place * row * 100) / 100;
        return (
          <g key={name}>
            <text x={LEFT} y={y + 12}>
              {name}
              {note !== undefined && <tspan class="wl-muscle-note">{`  ${note}`}</tspan>}
            </text>
            <rect class="wl-track" x={LEFT} y={y + 16} width={RIGHT - LEFT} height="7" />
            <rect class="wl-share" x={LEFT} y={y + 16} width={x(share)} height="7" />
            {mark !== undefined && <path class="wl-mark-line" d={`M${x(mark)} ${y + 14}v11`} />}
            <text class="wl-best" x="360" y={y + 24} text-anchor="end">
              {formatPercent(share)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
