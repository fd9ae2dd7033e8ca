import { inUnit } from '../shared/inUnit.ts';
import { EquationChart } from '../ui/EquationChart.tsx';
import { formatNumber } from '../ui/formatNumber.ts';
import type { EquationsResult } from './compute.ts';
import type { EquationsInput } from './fields.ts';
import { said } from './words.ts';

interface EquationsViewProps {
  readonly input: EquationsInput;
  readonly result: EquationsResult;
}

/** Every equation's answer on one axis, over the band that Windlass believes. */
export function EquationsView({ input: { show }, result }: EquationsViewProps) {
  const { answered, own } = result;
  if (own === null) return <p class="wl-pieces">{said.onlyItself}</p>;
  const rows = answered.map(({ equation, oneRepMaxKg, place }) => ({
    name: shortName(equation.name),
    value: inUnit(oneRepMaxKg, show),
    isInside: place === 'inside',
  }));
  const [low, likely, high] = [own.low, own.likely, own.high].map((kg) => inUnit(kg, show));
  const band = { low: low ?? 0, likely: likely ?? 0, high: high ?? 0 };
  const says = said.chart(
    rows.map(({ name, value }) => `${name} ${formatNumber(value, 1)} ${show}`),
    said.own(formatNumber(band.low, 1), formatNumber(band.high, 1), show),
  );
  return (
    <>
      <p class="wl-pieces-label">{said.dots}</p>
      <EquationChart rows={rows} band={band} bandLabel={said.band} says={says} />
    </>
  );
}

/** A name that leaves room for the axis, the lift left out: `Reynolds 2006, 5RM`. */
function shortName(name: string): string {
  return name
    .replace(' et al.', '')
    .replace('High-school powerlifters', 'Powerlifters')
    .replace(/,? (bench press|leg press|chest press|squat|deadlift)/, '');
}
