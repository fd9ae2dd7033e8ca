import { formatNumber } from './formatNumber.ts';
import { roundTicks } from './roundTicks.ts';

/** One value on the axis. */
export interface EquationRow {
  readonly name: string;
  readonly value: number;
  /** Made for what it is asked; a hollow mark otherwise. */
  readonly isInside: boolean;
}

interface EquationChartProps {
  /** Least first; at least one. */
  readonly rows: readonly EquationRow[];
  readonly band: { readonly low: number; readonly likely: number; readonly high: number };
  readonly bandLabel: string;
  readonly says: string;
}

const RIGHT = 348;
const TOP = 18;
const BASE = 216;
/** Drawing units of an average letter. */
const LETTER = 6;

/** Values by name on one axis, over a band. What lies far out is named at the edge. */
export function EquationChart({ rows, band, bandLabel, says }: EquationChartProps) {
  const left = Math.min(170, Math.max(...rows.map(({ name }) => name.length)) * LETTER + 8);
  const lowest = Math.min(band.low, ...rows.map(({ value }) => value));
  const highest = Math.max(band.high, ...rows.map(({ value }) => value));
  const edge = Math.min(highest, band.high + 1.5 * (band.high - lowest));
  const room = Math.max(edge - lowest, 1e-9);
  const [from, to] = [lowest - room * 0.06, edge + room * 0.06];
  const x = (value: number) => round(left + ((value - from) / (to - from)) * (RIGHT - left));
  const pitch = Math.min(18, (BASE - TOP - 8) / rows.length);
  return (
    <svg class="wl-equations" viewBox="0 0 360 240" role="img" aria-label={says}>
      <rect
        class="wl-capacity-band"
        x={x(band.low)}
        y={TOP}
        width={round(x(band.high) - x(band.low))}
        height={BASE - TOP}
      />
      <path class="wl-line" d={`M${x(band.likely)} ${TOP}V${BASE}`} />
      <text class="wl-tick" x={x((band.low + band.high) / 2)} y={TOP - 6} text-anchor="middle">
        {bandLabel}
      </text>
      {rows.map(({ name, value, isInside }, place) => {
        const y = round(TOP + 8 + pitch * (place + 0.5));
        const isOut = value > edge;
        return (
          <g key={name}>
            <text class="wl-tick" x={left - 6} y={y} dy="0.35em" text-anchor="end">
              {name}
            </text>
            <path class="wl-grid" d={`M${left} ${y}H${RIGHT}`} />
            {isOut ? (
              <text class="wl-best" x={RIGHT} y={y} dy="0.35em" text-anchor="end">
                {`${formatNumber(value, 0)} \u2192`}
              </text>
            ) : (
              <circle
                class="wl-dot"
                data-hollow={isInside ? undefined : 'true'}
                cx={x(value)}
                cy={y}
                r="4.5"
              />
            )}
          </g>
        );
      })}
      <path class="wl-base" d={`M${left} ${BASE}H${RIGHT}`} />
      {roundTicks(from, to).map((value) => (
        <text key={value} class="wl-tick" x={x(value)} y={BASE + 16} text-anchor="middle">
          {formatNumber(value, 2)}
        </text>
      ))}
    </svg>
  );
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
