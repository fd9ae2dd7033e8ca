import { type CapacityBandLine, CapacityCurves } from './CapacityCurves.tsx';

/** Capacity at a moment, with how sure that is. All between 0 and 1. */
export interface CapacityBandPoint {
  readonly seconds: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

interface CapacityChartProps {
  readonly points: readonly CapacityBandPoint[];
  readonly lines: readonly CapacityBandLine[];
  readonly says: string;
}

/** Capacity over the seconds of a set or a session, falling towards what the load asks for. */
export function CapacityChart({ points, lines, says }: CapacityChartProps) {
  const curve = (of: 'low' | 'likely' | 'high') =>
    points.map((point) => ({ seconds: point.seconds, capacity: point[of] }));
  return (
    <CapacityCurves
      low={curve('low')}
      likely={curve('likely')}
      high={curve('high')}
      lines={lines}
      says={says}
    />
  );
}
