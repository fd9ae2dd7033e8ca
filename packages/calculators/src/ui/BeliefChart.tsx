import { formatNumber } from './formatNumber.ts';
import { roundTicks } from './roundTicks.ts';

/** A source of a belief, with what it would say alone. */
export interface BeliefRow {
  readonly name: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** Said beside a row that does not go with the others. */
  readonly remark?: string;
}

interface BeliefChartProps {
  /** The curve from left to right; heights 0 to 1. */
  readonly points: readonly { readonly value: number; readonly height: number }[];
  readonly band: { readonly low: number; readonly likely: number; readonly high: number };
  /** Where the belief is bound on one side alone, the side on which it goes on. */
  readonly opens?: 'up' | 'down';
  readonly rows: readonly BeliefRow[];
  readonly says: string;
}

const LEFT = 84;
const RIGHT = 352;
const TOP = 8;
const BASE = 112;
const FIRST_ROW = 144;
const PITCH = 18;

/** A belief as a hill with its band, over what each of its sources says alone. */
export function BeliefChart({ points, band, opens, rows, says }: BeliefChartProps) {
  const reach = Math.max(band.high - band.low, 1e-9);
  const from = Math.min(points[0]?.value ?? band.low, ...rows.map(({ likely }) => likely));
  const to = Math.max(points.at(-1)?.value ?? band.high, ...rows.map(({ likely }) => likely));
  const [first, last] = [
    Math.max(from, band.low - 2.5 * reach),
    Math.min(to, band.high + 2.5 * reach),
  ];
  const held = (value: number) => Math.min(last, Math.max(first, value));
  const x = (value: number) =>
    round(LEFT + ((held(value) - first) / Math.max(last - first, 1e-9)) * (RIGHT - LEFT));
  const y = (height: number) => round(BASE - height * (BASE - TOP));
  const hill = points.filter(({ value }) => value >= first && value <= last);
  const inBand = hill.filter(
    ({ value }) =>
      (opens === 'down' || value >= band.low) && (opens === 'up' || value <= band.high),
  );
  return (
    <svg class="wl-belief" viewBox="0 0 360 252" role="img" aria-label={says}>
      <path class="wl-hill" d={area(hill)} />
      {inBand.length > 1 && <path class="wl-capacity-band" d={area(inBand)} />}
      <path class="wl-line" d={`M${x(band.likely)} ${TOP}V${BASE}`} />
      <path class="wl-base" d={`M${LEFT} ${BASE}H${RIGHT}`} />
      {roundTicks(first, last).map((value) => (
        <text key={value} class="wl-tick" x={x(value)} y={BASE + 16} text-anchor="middle">
          {formatNumber(value, 2)}
        </text>
      ))}
      {rows.map(({ name, low, likely, high, remark }, place) => {
        const at = FIRST_ROW + PITCH * place;
        const isFarRight = x(high) > RIGHT - 60;
        return (
          <g key={place}>
            <text class="wl-tick" x={LEFT - 8} y={at} dy="0.35em" text-anchor="end">
              {name}
            </text>
            <path class="wl-whisker" d={`M${x(low)} ${at}H${x(high)}`} />
            <circle
              class="wl-dot"
              data-hollow={remark ? 'true' : undefined}
              cx={x(likely)}
              cy={at}
              r="4.5"
            />
            {remark && (
              <text
                class="wl-tick"
                x={isFarRight ? x(low) - 4 : x(high) + 4}
                y={at}
                dy="0.35em"
                text-anchor={isFarRight ? 'end' : 'start'}
              >
                {remark}
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );

  function area(some: typeof points): string {
    const top = some.map(({ value, height }) => `${x(value)} ${y(height)}`).join('L');
    return `M${x(some[0]?.value ?? first)} ${BASE}L${top}L${x(some.at(-1)?.value ?? first)} ${BASE}Z`;
  }
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
