import { formatLoad, type Load, subtractLoad, type Unit } from '@windlass/core/load';
import type { Headline } from '../contract/Answer.ts';
import { loadFace, loadWords } from '../shared/loadWords.ts';
import { type GymResult, isByNumber } from './compute.ts';
import type { GymInput } from './fields.ts';
import { numberWords } from './numberWords.ts';
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
      ...(kind === 'body' ? { also: said.added(signed(loadWords(load.shown, input.show))) } : {}),
    };
  }
  const face = loadFace(load.shown, input.show);
  return {
    label: said.toNumber[counted](loadWords(wish, input.show)),
    ...face,
    value: signed(face.value),
    also: said.moves[kind](roughly(load.load, input.show)),
  };
}

/** To one decimal, where there is little room. */
function roughly(load: Load, unit: Unit): string {
  return formatLoad(load, { unit, maxDecimals: 1, markRounded: false });
}

/** With a true minus. */
function signed(words: string): string {
  return words.replace('-', '\u2212');
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
  return said.span(numberWords(list.loads[0], show), numberWords(heaviest, show));
}
