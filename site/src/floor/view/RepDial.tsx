import { formatNumber } from '@windlass/calculators/ui';
import type { RepPhase } from '@windlass/core/tempo';
import type { CountNow } from '../count/countAt.ts';
import { words } from '../words.ts';

interface RepDialProps {
  readonly phases: readonly RepPhase[];
  /** Where the count stands; `null`: it stands still or there is none. */
  readonly now: CountNow | null;
  /** The figure in the middle, and what it counts. */
  readonly figure: string;
  readonly unit: string;
}

const CENTRE = 150;
const RADIUS = 112;
/** Half of the gap between two arcs, in radians. */
const GAP = 0.035;

/** One repetition as arcs, clockwise from the top, as long as their seconds; a hand at the moment. */
export function RepDial({ phases, now, figure, unit }: RepDialProps) {
  const total = phases.reduce((sum, { seconds }) => sum + seconds, 0);
  let from = 0;
  const arcs = phases.map(({ phase, seconds }, place) => {
    const start = from;
    from += (seconds / total) * 2 * Math.PI;
    return { phase, seconds, place, start, end: from };
  });
  const current = now?.kind === 'rep' ? now.place : null;
  const hand = now?.kind === 'rep' ? now.share * 2 * Math.PI : 0;
  const [x, y] = at(hand, RADIUS + 17);
  const [innerX, innerY] = at(hand, RADIUS - 17);
  return (
    <svg
      class="dial"
      viewBox="0 0 300 300"
      role="img"
      aria-label={words.lifting.dial(phases.map(words.phase).join(', '))}
    >
      {arcs.map(({ phase, place, start, end }) => (
        <path
          key={place}
          class="dial-arc"
          data-phase={phase}
          data-now={place === current ? 'true' : undefined}
          d={arcs.length === 1 ? circle() : arc(start + GAP, Math.max(start + GAP, end - GAP))}
        />
      ))}
      {arcs.length > 1 &&
        arcs.map(({ place, seconds, start, end }) => {
          const [labelX, labelY] = at((start + end) / 2, RADIUS + 30);
          return (
            <text
              key={place}
              class="dial-seconds"
              x={labelX}
              y={labelY}
              dy="0.35em"
              text-anchor="middle"
            >
              {words.lifting.seconds(formatNumber(seconds))}
            </text>
          );
        })}
      {now?.kind === 'rep' && <path class="dial-hand" d={`M${innerX} ${innerY}L${x} ${y}`} />}
      <text class="dial-figure" x={CENTRE} y={CENTRE + 8} dy="0.3em" text-anchor="middle">
        {figure}
      </text>
      <text class="dial-unit" x={CENTRE} y={CENTRE - 52} text-anchor="middle">
        {unit}
      </text>
    </svg>
  );
}

function at(angle: number, radius: number): readonly [x: number, y: number] {
  return [round(CENTRE + radius * Math.sin(angle)), round(CENTRE - radius * Math.cos(angle))];
}

function arc(start: number, end: number): string {
  const [x1, y1] = at(start, RADIUS);
  const [x2, y2] = at(end, RADIUS);
  return `M${x1} ${y1}A${RADIUS} ${RADIUS} 0 ${end - start > Math.PI ? 1 : 0} 1 ${x2} ${y2}`;
}

function circle(): string {
  return `${arc(0, Math.PI)}${arc(Math.PI, 2 * Math.PI)}`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
