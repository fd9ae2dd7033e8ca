import { subtractLoad } from '@windlass/core/load';
import type { Headline } from '../contract/Answer.ts';
import { loadFace, loadWords } from '../shared/loadWords.ts';
import { type Chosen, type GymResult, isByNumber } from './compute.ts';
import type { GymInput } from './fields.ts';
import { said } from './words.ts';

/** The one number: how many loads, or the load that answers the wish in the other of its two counts. */
export function headlineOf(input: GymInput, result: GymResult): Headline {
  const { list, chosen } = result;
  if (chosen === null) {
    const count = list.loads.length;
    return {
      label: said.makes,
      value: String(count),
      unit: said.loads(count),
      also: spanWords(input, result),
      exact: count,
    };
  }
  const { load, wish } = chosen;
  const counted = countedAs(input, result);
  if (counted === null) {
    const hands = input.gear === 'dumbbells' || input.gear === 'handles' ? input.hands : null;
    return {
      label: said.nearest(loadWords(wish, input.show), hands),
      ...loadFace(load.shown, input.show),
    };
  }
  const shown = counted === 'help' ? subtractLoad(0 as typeof wish, load.shown) : load.shown;
  const kind = counted === 'stack' || counted === 'machine' ? counted : 'body';
  if (isByNumber(input, list)) {
    return {
      label: said.fromNumber[counted](loadWords(shown, input.show)),
      ...loadFace(load.load, input.show),
      also: said.numbers[kind](loadWords(load.shown, input.show)),
    };
  }
  return {
    label: said.toNumber[counted](loadWords(wish, input.show)),
    ...loadFace(load.shown, input.show),
    also: said.moves[kind](loadWords(load.load, input.show)),
  };
}

type TwoCounts = keyof typeof said.fromNumber;

/** How the two counts of this equipment are named; `null` where there is only one. */
export function countedAs({ gear, added }: GymInput, { list }: GymResult): TwoCounts | null {
  if (gear === 'stack') return 'stack';
  if (gear === 'machine') return list.standing === 'relative' ? null : 'machine';
  return gear === 'body' ? added : null;
}

/** `4 to 32 kg`, by the number on the equipment. */
export function spanWords({ show }: GymInput, { list }: GymResult): string {
  const heaviest = list.loads.at(-1) ?? list.loads[0];
  return said.span(loadWords(list.loads[0].shown, show), loadWords(heaviest.shown, show));
}

/** The count in which a chosen load is compared and named: its number, or what is moved. */
export function nameOf(input: GymInput, result: GymResult, { load }: Pick<Chosen, 'load'>): string {
  return loadWords(isByNumber(input, result.list) ? load.shown : load.load, input.show);
}
