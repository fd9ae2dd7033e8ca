import type { Band } from '@windlass/core/basis';
import type { RepWindow } from '@windlass/core/strength';

interface RepRulerProps {
  readonly reps: Band;
  readonly window: RepWindow;
  /** Where the scale ends: the same on the whole sheet. */
  readonly most: number;
  readonly says: string;
}

const FROM = 1.5;
const TO = 97;
const LINE = 24;

/** A scale of repetitions: the window as a gate on it, where the set will probably end as a bar. */
export function RepRuler({ reps, window, most, says }: RepRulerProps) {
  const x = (count: number) => FROM + (Math.min(count, most) / most) * (TO - FROM);
  const at = (count: number) => percent(x(count));
  const counts = Array.from({ length: most + 1 }, (_, count) => count);
  const [gateFrom, gateTo] = [x(window.minReps - 0.5), x(window.maxReps + 0.5)];
  return (
    <svg class="ruler" height="44" width="100%" role="img" aria-label={says}>
      <rect
        class="ruler-gate"
        x={percent(gateFrom)}
        width={percent(gateTo - gateFrom)}
        y="1"
        height={LINE - 1}
      />
      {[gateFrom, gateTo].map((end) => (
        <line key={end} class="ruler-post" x1={percent(end)} x2={percent(end)} y1="0" y2={LINE} />
      ))}
      <line class="ruler-line" x1={at(0)} x2={at(most)} y1={LINE} y2={LINE} />
      {counts.map((count) => (
        <line
          key={count}
          class="ruler-line"
          x1={at(count)}
          x2={at(count)}
          y1={LINE}
          y2={LINE + (count % 5 === 0 ? 7 : 3)}
        />
      ))}
      {counts
        .filter((count) => count % 5 === 0)
        .map((count) => (
          <text key={count} class="ruler-count" x={at(count)} y="42" text-anchor="middle">
            {count}
          </text>
        ))}
      <rect
        class="ruler-band"
        x={at(reps.low)}
        width={percent(x(reps.high) - x(reps.low))}
        y="9"
        height="7"
      />
      <line class="ruler-likely" x1={at(reps.likely)} x2={at(reps.likely)} y1="4" y2={LINE - 3} />
    </svg>
  );
}

function percent(value: number): string {
  return `${Math.round(value * 100) / 100}%`;
}
