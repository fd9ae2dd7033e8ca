import { clippedName } from './clippedName.ts';

/** One muscle: hours from the left edge until it is ready, as three times. */
export interface ReadinessRow {
  readonly name: string;
  readonly earliest: number;
  readonly likely: number;
  readonly cautious: number;
  /** The likely time, as it is read. */
  readonly when: string;
}

interface ReadinessStripProps {
  /** The last to be ready first; the first seven are shown. */
  readonly rows: readonly ReadinessRow[];
  /** Midnights, in hours from the left edge, each with the day that begins. */
  readonly days: readonly { readonly at: number; readonly name: string }[];
  /** A start that is planned, in hours. */
  readonly planned: number | null;
  readonly says: string;
}

const WIDTH = 360;
const TOP = 20;
const HEIGHT = 262;
const MOST_ROWS = 7;
/** Least distance of two names of days. */
const APART = 46;

/** Muscles over the coming days: not ready, ready for some, ready for nearly all. */
export function ReadinessStrip({ rows, days, planned, says }: ReadinessStripProps) {
  const shown = rows.slice(0, MOST_ROWS);
  const row = Math.min(44, (HEIGHT - TOP) / Math.max(1, shown.length));
  const span = Math.max(48, ...shown.map(({ cautious }) => cautious * 1.04));
  const x = (hours: number) => Math.round((Math.min(hours, span) / span) * WIDTH * 100) / 100;
  const inside = days.filter(({ at }) => at <= span);
  const pitch = inside[1] && inside[0] ? x(inside[1].at) - x(inside[0].at) : WIDTH;
  const every = Math.max(1, Math.ceil(APART / Math.max(pitch, 0.01)));
  const named = inside.filter((_, place) => place % every === 0);
  const bottom = Math.round((TOP + row * shown.length) * 100) / 100;
  return (
    <svg class="wl-ready" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={says}>
      {named.map(({ at, name }) => (
        <g key={at}>
          <path class="wl-grid" d={`M${x(at)} ${TOP - 4}V${bottom}`} />
          <text
            class="wl-tick"
            x={Math.min(x(at), WIDTH - 18)}
            y={TOP - 8}
            text-anchor={x(at) < 18 ? 'start' : 'middle'}
          >
            {name}
          </text>
        </g>
      ))}
      {shown.map(({ name, earliest, likely, cautious, when }, place) => {
        const y = Math.round((TOP + place * row) * 100) / 100;
        const bar = y + 17;
        return (
          <g key={name}>
            <text x="0" y={y + 12}>
              {clippedName(name, 26)}
            </text>
            <text class="wl-ready-when" x={WIDTH} y={y + 12} text-anchor="end">
              {when}
            </text>
            <rect class="wl-track" x="0" y={bar} width={WIDTH} height="9" />
            <rect class="wl-share" x="0" y={bar} width={x(earliest)} height="9" />
            <rect
              class="wl-ready-some"
              x={x(earliest)}
              y={bar}
              width={Math.round((x(cautious) - x(earliest)) * 100) / 100}
              height="9"
            />
            <path
              class="wl-mark-line"
              d={`M${x(earliest)} ${bar - 2}v13M${x(cautious)} ${bar - 2}v13`}
            />
            <circle class="wl-mark-dot" cx={x(likely)} cy={bar + 4.5} r="4.5" />
          </g>
        );
      })}
      {planned !== null && planned <= span && (
        <path class="wl-line" d={`M${x(planned)} ${TOP - 4}V${bottom}`} />
      )}
    </svg>
  );
}
