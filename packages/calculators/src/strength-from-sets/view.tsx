import { kappaBand, oneRepMaxKg, priorFor, strengthFrom } from '@windlass/core/strength';
import { inUnit } from '../shared/inUnit.ts';
import { BeliefChart, type BeliefRow } from '../ui/BeliefChart.tsx';
import { formatNumber } from '../ui/formatNumber.ts';
import type { StrengthResult } from './compute.ts';
import { densityOf } from './densityOf.ts';
import type { StrengthInput } from './fields.ts';
import { boundEnd, LEVELS } from './maxFace.ts';
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
        {...bandOf(input, result)}
        rows={rows}
        says={said.chart(words(max.likely), words(max.low), words(max.high), names)}
      />
    </>
  );
}

/** The band of the belief; where the sets bind one side alone, that side and a view beyond it. */
function bandOf({ show }: StrengthInput, { belief, max }: StrengthResult) {
  const end = boundEnd(belief);
  const unit = (kg: number) => inUnit(kg, show);
  const at = unit(oneRepMaxKg(belief, LEVELS[end])[end]);
  switch (end) {
    case 'likely':
      return { band: { low: unit(max.low), likely: at, high: unit(max.high) } };
    case 'low':
      return { band: { low: at, likely: at, high: at * BEYOND }, opens: 'up' } as const;
    case 'high':
      return { band: { low: at / BEYOND, likely: at, high: at }, opens: 'down' } as const;
  }
}

/** How far beyond a bound there is something to see. */
const BEYOND = 1.4;

function aloneKg(set: StrengthResult['sets'][number], { curve, max }: StrengthResult) {
  const alone = strengthFrom({ sets: [set], prior: priorFor(curve), today: 0 });
  return alone.kind === 'posterior' ? oneRepMaxKg(alone) : max;
}
