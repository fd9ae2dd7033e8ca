import type { TempoPhase } from '@windlass/core/tempo';
import { words } from '../words.ts';
import { formatNumber } from './formatNumber.ts';

export interface ArcPhase {
  readonly phase: TempoPhase;
  readonly seconds: number;
}

interface CountArcsProps {
  /** The phases of one repetition as they happen, first to last. */
  readonly phases: readonly ArcPhase[];
  readonly says: string;
}

const CENTRE_X = 180;
const CENTRE_Y = 112;
const RADIUS = 66;
/** Half of the gap between two arcs, in radians. */
const GAP = 0.03;

/** A repetition as arcs of a dial, clockwise from the top, as long as their seconds. */
export function CountArcs({ phases, says }: CountArcsProps) {
  const total = phases.reduce((sum, { seconds }) => sum + seconds, 0);
  let from = 0;
  const arcs = phases.map((arc) => {
    const start = from;
    from += (arc.seconds / total) * 2 * Math.PI;
    return { ...arc, start, end: from, middle: (start + from) / 2 };
  });
  return (
    <svg class="wl-arcs" viewBox="0 0 360 224" role="img" aria-label={says}>
      {arcs.map(({ phase, start, end }) => (
        <path
          key={phase}
          class="wl-arc"
          data-phase={phase}
          d={
            arcs.length === 1
              ? fullCircle()
              : arcPath(start + GAP, Math.max(start + GAP, end - GAP))
          }
        />
      ))}
      <path class="wl-arc-start" d={`M${CENTRE_X} ${CENTRE_Y - RADIUS - 17}v34`} />
      {arcs.map(({ phase, seconds, middle }) => (
        <ArcLabel key={phase} phase={phase} seconds={seconds} angle={middle} />
      ))}
      <text class="wl-arc-total" x={CENTRE_X} y={CENTRE_Y + 4} text-anchor="middle">
        {words.time.seconds(formatNumber(total))}
      </text>
      <text class="wl-arc-unit" x={CENTRE_X} y={CENTRE_Y + 21} text-anchor="middle">
        {words.count.perRep}
      </text>
    </svg>
  );
}

interface ArcLabelProps extends ArcPhase {
  readonly angle: number;
}

function ArcLabel({ phase, seconds, angle }: ArcLabelProps) {
  const [x, y] = at(angle, RADIUS + 20);
  const sideways = Math.sin(angle);
  const anchor = Math.abs(sideways) < 0.25 ? 'middle' : sideways > 0 ? 'start' : 'end';
  const up = Math.cos(angle) > 0.9 ? -6 : Math.cos(angle) < -0.9 ? 8 : 0;
  return (
    <text x={x} y={y + up} text-anchor={anchor}>
      <tspan class="wl-arc-seconds">{words.time.seconds(formatNumber(seconds))}</tspan>
      <tspan class="wl-arc-name" dx="4">
        {words.phases[phase]}
      </tspan>
    </text>
  );
}

function at(angle: number, radius: number): readonly [x: number, y: number] {
  return [round(CENTRE_X + radius * Math.sin(angle)), round(CENTRE_Y - radius * Math.cos(angle))];
}

function arcPath(start: number, end: number): string {
  const [x1, y1] = at(start, RADIUS);
  const [x2, y2] = at(end, RADIUS);
  return `M${x1} ${y1}A${RADIUS} ${RADIUS} 0 ${end - start > Math.PI ? 1 : 0} 1 ${x2} ${y2}`;
}

function fullCircle(): string {
  return `${arcPath(0, Math.PI)}${arcPath(Math.PI, 2 * Math.PI)}`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
