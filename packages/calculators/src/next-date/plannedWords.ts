import { inSentence } from '@windlass/core/basis';
import type { ReadyHours } from '@windlass/core/recovery';
import { formatWall } from '../ui/formatDate.ts';
import type { NextDateResult } from './compute.ts';
import type { NextDateInput } from './fields.ts';
import { muscleName } from './muscleName.ts';
import { said } from './words.ts';

/** Where a planned start lies among the times of its muscles; nothing without one. */
export function plannedWords(input: NextDateInput, result: NextDateResult): readonly string[] {
  const { plannedOn, plannedAt } = input;
  const { shared, plannedIn } = result;
  if (plannedOn === null) return [];
  const when = formatWall(`${plannedOn}T${plannedAt}`);
  if (plannedIn === null) return [said.plannedBad(when)];
  const late = (at: keyof ReadyHours) =>
    said.list(
      shared
        .filter(({ readyIn }) => readyIn[at] > plannedIn)
        .map(({ muscle }) => inSentence(muscleName(muscle))),
    );
  const [early, unlikely, unsure] = [late('earliest'), late('likely'), late('cautious')];
  if (early !== '') return [said.plannedEarly(when, early), said.plannedMove];
  if (unlikely !== '') return [said.plannedLikely(when, unlikely), said.plannedMove];
  return [unsure === '' ? said.plannedLate(when) : said.plannedBetween(when, unsure)];
}
