import { bodyLoad } from '@windlass/core/equipment';
import { type Load, loadFromValue, loadValue, scaleLoad } from '@windlass/core/load';
import type { PerformedSet } from '@windlass/core/strength';
import type { NoAnswer } from '../contract/Answer.ts';
import { performedSets, type SetRow } from '../shared/performedSets.ts';
import type { StrengthInput } from './fields.ts';
import { said } from './words.ts';

/** The sets with everything that moved in them, oldest first, or why one of them is none. */
export function setsOf({ sets, lifted }: StrengthInput): readonly PerformedSet[] | NoAnswer {
  const rows: SetRow[] = [];
  for (const [at, row] of sets.entries()) {
    const written = loadFromValue(row.load);
    const moved = lifted === 'weight' ? moving(written) : withBody(row, lifted, written);
    if (typeof moved !== 'number') {
      return { ...moved, message: said.inSet(at + 1, moved.message) };
    }
    rows.push({ ...row, load: loadValue(moved, 'kg') });
  }
  return performedSets(rows, { gear: 'bar', pulley: '1' });
}

function moving(load: Load): Load | NoAnswer {
  if (load > 0) return load;
  const { nothing: headline, nothingMoves: message } = said;
  return { kind: 'none', reason: 'nothing-moves', headline, message };
}

function withBody(
  { bodyWeight }: Pick<StrengthInput['sets'][number], 'bodyWeight'>,
  lifted: 'belt' | 'help',
  written: Load,
): Load | NoAnswer {
  const added = lifted === 'belt' ? written : scaleLoad(written, -1);
  const moved = bodyLoad(loadFromValue(bodyWeight), added);
  if (moved.kind === 'load') return moved.load;
  return { kind: 'none', reason: moved.reason, headline: said.nothing, message: moved.message };
}
