import { kappaBand, oneRepMaxKg, priorFor, strengthFrom } from '@windlass/core/strength';
import { inUnit } from '../shared/inUnit.ts';
import { BeliefChart, type BeliefRow } from '../ui/BeliefChart.tsx';
import { formatNumber } from '../ui/formatNumber.ts';
import type { StrengthResult } from './compute.ts';
import { densityOf } from './densityOf.ts';
import type { StrengthInput } from './fields.ts';
import { kgWords, setName } from './names.ts';
import { repsAtEighty } from './repsAtEighty.ts';
import { said } from './words.ts';

interface StrengthViewProps {
  readonly input: StrengthInput;
  readonly result: StrengthResult;
}

/** So many of the newest sets have room under the curve. */
const MOST_ROWS = 6;

/** Endurance in a sentence, and the belief about the one-rep max over what each set alone would say. */
export function StrengthView({ input, result }: StrengthViewProps) {
  const { belief, max, told } = result;
  const unit = (kg: number) => inUnit(kg, input.show);
  const rows = told.slice(-MOST_ROWS).map(({ set, disagrees }) => {
    const alone = aloneKg(set, result);
    return {
      name: setName(set, input),
      low: unit(alone.low),
      likely: unit(alone.likely),
      high: unit(alone.high),
      ...(disagrees ? { remark: said.off } : {}),
    } satisfies BeliefRow;
  });
  const words = (kg: number) => kgWords(kg, input);
  const names = rows.map(({ name, low, high }) =>
    said.chartSet(name, formatNumber(low, 0), formatNumber(high, 0)),
  );
  const reps = repsAtEighty(kappaBand(belief), belief.alpha);
  return (
    <>
      <p class="wl-pieces">
        {said.endurance(formatNumber(reps.low, 0), formatNumber(reps.high, 0))}
      </p>
      <p class="wl-pieces-label">{said.chartLabel(input.show, result.body !== null)}</p>
      <BeliefChart
        points={densityOf(belief).map(({ kg, height }) => ({ value: unit(kg), height }))}
        band={{ low: unit(max.low), likely: unit(max.likely), high: unit(max.high) }}
        rows={rows}
        says={said.chart(words(max.likely), words(max.low), words(max.high), names)}
      />
    </>
  );
}

function aloneKg(set: StrengthResult['sets'][number], { curve, max }: StrengthResult) {
  const alone = strengthFrom({ sets: [set], prior: priorFor(curve), today: 0 });
  return alone.kind === 'posterior' ? oneRepMaxKg(alone) : max;
}
