import highsLoader from 'highs';
import { type Load, loadFromValue, toKg } from '../../load/index.ts';
import type { PlateStock } from '../Equipment.ts';

/** Solves for the fewest pairs of plates that weigh exactly `plates` together. */
export type FewestPieces = (stock: readonly PlateStock[], plates: Load) => number | 'infeasible';

/**
 * Fewest pieces as an integer program: minimise the sum of pairs, subject to their weight being
 * the one asked for and to the stock. Weights go in as kilograms; with the feasibility tolerance of
 * 1e-9 kg, two different sums of real plates cannot be taken for each other.
 */
export async function fewestPiecesByMip(): Promise<FewestPieces> {
  const highs = await highsLoader();
  return (stock, plates) => {
    const names = stock.map((_, index) => `x${index}`);
    const terms = stock.map(
      ({ weight }, index) => `${toKg((2 * loadFromValue(weight)) as Load)} ${names[index]}`,
    );
    const bounds = stock.map(
      ({ pieces }, index) => ` 0 <= ${names[index]} <= ${Math.floor(pieces / 2)}`,
    );
    const solution = highs.solve(
      [
        'Minimize',
        ` pairs: ${names.join(' + ')}`,
        'Subject To',
        ` weight: ${terms.join(' + ')} = ${toKg(plates)}`,
        'Bounds',
        ...bounds,
        'General',
        ` ${names.join(' ')}`,
        'End',
      ].join('\n'),
      { mip_feasibility_tolerance: 1e-9, primal_feasibility_tolerance: 1e-9 },
    );
    return solution.Status === 'Optimal' ? 2 * Math.round(solution.ObjectiveValue) : 'infeasible';
  };
}
