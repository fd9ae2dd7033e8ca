import { toKg } from '../../load/index.ts';
import { evidenceFigures } from '../evidenceFigures.ts';
import type { Plane } from '../grid/Axis.ts';
import type { SetConditions } from '../PerformedSet.ts';
import { paceDoubt } from './paceDoubt.ts';

/**
 * Visits every cell of a plane with the count that a set to failure would have there: its mean, by
 * the rep curve carried on below one repetition, and its standard deviation, by the evidence model.
 *
 * `grain` is the doubt in ln(one-rep max) that a coarse plane brings by itself; 0 on a fine one.
 */
export function forEachCount(
  conditions: SetConditions,
  plane: Plane,
  alpha: number,
  visit: (cell: number, mean: number, spread: number) => void,
  grain = 0,
): void {
  const { repeat, form } = evidenceFigures;
  const { factor, kappaSd, loadSd } = paceDoubt(conditions.secondsPerRep);
  const left = conditions.capacity ?? 1;
  const leftSd = evidenceFigures.capacity * (1 - left);
  const lnLoad = Math.log(toKg(conditions.load));
  const perLoadSd = Math.hypot(loadSd, grain);
  const columns = plane.columns.count;
  const kappas = Array.from(
    { length: plane.rows.count },
    (_, row) => factor * Math.exp(plane.rows.from + plane.rows.step * row),
  );
  for (let column = 0; column < columns; column += 1) {
    const lnShare = lnLoad - plane.columns.from - plane.columns.step * column;
    const share = Math.exp(lnShare);
    const bent = Math.exp(-alpha * lnShare);
    const gain = (left - share) * bent;
    const slope = share * bent + alpha * gain;
    const formSd = form.base + form.perShare * Math.max(0, form.from - share);
    for (let row = 0; row < kappas.length; row += 1) {
      const kappa = kappas[row] as number;
      const mean = 1 + kappa * gain;
      const count = Math.max(mean, 0);
      const repeatSd = repeat.base + repeat.perRep * count;
      const byLoad = kappa * slope * perLoadSd;
      const byKappa = (mean - 1) * kappaSd;
      const byForm = count * formSd;
      const byLeft = kappa * bent * leftSd;
      visit(
        row * columns + column,
        mean,
        Math.sqrt(
          repeatSd * repeatSd +
            byLoad * byLoad +
            byKappa * byKappa +
            byForm * byForm +
            byLeft * byLeft,
        ),
      );
    }
  }
}
