import type { PlannedSession, TimelineItem } from '@windlass/core/session';

interface TimeStripProps {
  readonly plan: PlannedSession;
  readonly says: string;
}

const BASE = 46;
const TOP: Readonly<Record<TimelineItem['kind'], number>> = {
  work: 20,
  'warm-up': 33,
  rest: BASE,
  change: BASE,
};

/** The session from left to right in time: each lift with its number where its work begins. */
export function TimeStrip({ plan, says }: TimeStripProps) {
  const { timeline } = plan;
  const last = timeline.at(-1);
  const end = last ? last.startSeconds + last.seconds : 1;
  const x = (seconds: number) => `${Math.round((seconds / end) * 10_000) / 100}%`;
  const starts = plan.lifts.flatMap((_, lift) => {
    const first = timeline.find((item) => item.lift === lift && item.kind !== 'change');
    return first ? [{ lift, at: first.startSeconds }] : [];
  });
  const step = end > 3600 ? 15 : end > 1800 ? 10 : 5;
  const marks = Array.from({ length: Math.floor(end / 60 / step) }, (_, n) => (n + 1) * step);
  return (
    <svg class="strip" height="68" width="100%" role="img" aria-label={says}>
      {timeline.map((item) => (
        <Stretch key={item.startSeconds} item={item} x={x} />
      ))}
      {starts.map(({ lift, at }) => (
        <text key={lift} class="strip-lift" x={x(at)} y="13">
          {lift + 1}
        </text>
      ))}
      {marks.map((minute) => (
        <g key={minute}>
          <line
            class="strip-mark"
            x1={x(minute * 60)}
            x2={x(minute * 60)}
            y1={BASE}
            y2={BASE + 6}
          />
          <text
            class="strip-minute"
            x={x(minute * 60)}
            y={BASE + 20}
            text-anchor={minute * 60 > end * 0.97 ? 'end' : 'middle'}
          >
            {minute}
          </text>
        </g>
      ))}
    </svg>
  );
}

interface StretchProps {
  readonly item: TimelineItem;
  readonly x: (seconds: number) => string;
}

/** Setting up is dotted, rest a line, warm-up a low open block, work a high full one. */
function Stretch({ item, x }: StretchProps) {
  const { kind, startSeconds, seconds } = item;
  if (kind === 'change' || kind === 'rest') {
    return (
      <line
        class="strip-line"
        data-kind={kind}
        x1={x(startSeconds)}
        x2={x(startSeconds + seconds)}
        y1={BASE}
        y2={BASE}
      />
    );
  }
  return (
    <rect
      class="strip-block"
      data-kind={kind}
      x={x(startSeconds)}
      width={x(seconds)}
      y={TOP[kind]}
      height={BASE - TOP[kind]}
    />
  );
}
