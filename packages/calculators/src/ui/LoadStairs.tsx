/** One load as a stair. */
export interface Stair {
  readonly label: string;
  /** 0 or more, in any unit. */
  readonly value: number;
  readonly isChosen: boolean;
  /** The step up to it from the one before, such as `+8.3 %`; none for the first. */
  readonly step?: string;
  /** The step is too large to take at once. */
  readonly isLarge?: boolean;
}

interface LoadStairsProps {
  readonly stairs: readonly Stair[];
  /** Places of all loads on a line from 0 to the heaviest, 0 to 1, and which part the stairs show. */
  readonly all: readonly number[];
  readonly from: number;
  readonly to: number;
  /** The heaviest load, for the end of the line. */
  readonly end: string;
  readonly says: string;
}

const WIDTH = 360;
const TOP = 20;
const BASE = 140;
const STRIP = 192;
const GAP = 8;

/** The loads around one as stairs in true proportion, over a line with a mark for every load. */
export function LoadStairs({ stairs, all, from, to, end, says }: LoadStairsProps) {
  const width = Math.min(60, (WIDTH - GAP * (stairs.length - 1)) / Math.max(stairs.length, 1));
  const start = (WIDTH - stairs.length * (width + GAP) + GAP) / 2;
  const most = Math.max(...stairs.map(({ value }) => value)) || 1;
  const centre = (place: number) => start + place * (width + GAP) + width / 2;
  const x = (place: number) => Math.round(4 + place * (WIDTH - 8));
  const marks = [...new Set(all.map((place) => x(place) + 0.5))];
  return (
    <svg class="wl-stairs" viewBox={`0 0 ${WIDTH} 216`} role="img" aria-label={says}>
      {stairs.map(({ label, value, isChosen }, place) => {
        const top = BASE - (Math.max(0, value) / most) * (BASE - TOP);
        return (
          <g key={place}>
            <rect
              class="wl-column"
              data-best={isChosen ? 'true' : undefined}
              x={centre(place) - width / 2}
              y={top}
              width={width}
              height={Math.max(1, BASE - top)}
            />
            <text
              class={isChosen ? 'wl-best' : undefined}
              x={centre(place)}
              y={top - 6}
              text-anchor="middle"
            >
              {label}
            </text>
          </g>
        );
      })}
      {stairs.map(({ step, isLarge }, place) =>
        step === undefined ? null : (
          <g key={place}>
            <path
              class={isLarge ? 'wl-step-large' : 'wl-lead'}
              d={`M${centre(place - 1)} ${BASE + 7}H${centre(place)}`}
            />
            <text
              class={isLarge ? 'wl-best' : 'wl-tick'}
              x={(centre(place - 1) + centre(place)) / 2}
              y={BASE + 22}
              text-anchor="middle"
            >
              {step}
            </text>
          </g>
        ),
      )}
      <path class="wl-base" d={`M4 ${STRIP}H${WIDTH - 4}`} />
      <path class="wl-marks" d={marks.map((at) => `M${at} ${STRIP}v-9`).join('')} />
      <text class="wl-tick" x="4" y={STRIP + 22}>
        0
      </text>
      <text class="wl-tick" x={WIDTH - 4} y={STRIP + 22} text-anchor="end">
        {end}
      </text>
      <path class="wl-step-large" d={`M${x(from)} ${STRIP + 7}H${Math.max(x(to), x(from) + 2)}`} />
    </svg>
  );
}
