import { addLoads, loadFromValue, subtractLoad } from '@windlass/core/load';
import type { Why } from '../contract/Answer.ts';
import { weightOfBar } from '../shared/barFields.ts';
import { loadWords, pieceWords } from '../shared/loadWords.ts';
import { plateWords } from '../shared/plateWords.ts';
import { sideOf } from '../shared/sideOf.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { percentWords } from './certaintyOf.ts';
import type { Chosen, GymResult } from './compute.ts';
import type { GymInput } from './fields.ts';
import { spanWords } from './headlineOf.ts';
import { said } from './words.ts';

/** What is added up, with the numbers of the chosen load, and the step above it. */
export function whyOf(input: GymInput, result: GymResult): Why {
  const { list, chosen } = result;
  const { gear } = input;
  const isUnknown = gear === 'machine' && list.standing === 'relative';
  return {
    formula: said.formula[isUnknown ? 'machineUnknown' : gear === 'band' ? 'post' : gear],
    steps: [
      ...(chosen === null || isUnknown ? [] : [sumOf(input, chosen)]),
      said.counted(list.loads.length, spanWords(input, result)),
      ...(chosen ? stepOf(input, chosen) : []),
    ],
    restsOn: said.restsOn,
  };
}

function sumOf(input: GymInput, { load }: Chosen): string {
  const { gear, show } = input;
  const total = loadWords(load.load, show);
  const plates = plateWords(sideOf(load));
  switch (gear) {
    case 'bar':
      return said.sum.bar(pieceWords(weightOfBar(input)), pieceWords(input.collar), plates, total);
    case 'handles':
      return said.sum.handles(pieceWords(input.handle), plates, total);
    case 'stack':
      return said.sum.stack(loadWords(load.shown, show), Number(input.pulley), total);
    case 'machine':
      return said.sum.machine(
        pieceWords(input.startLoad),
        loadWords(load.shown, show),
        input.rail,
        total,
      );
    case 'body':
      return bodySum(input, load, total);
    case 'post':
      return said.sum.post(pieceWords(input.base), plates, total);
    case 'dumbbells':
    case 'band':
      return said.sum.dumbbells(total);
  }
}

function bodySum({ bodyWeight, show }: GymInput, { load, shown }: Chosen['load'], total: string) {
  const weight = loadFromValue(bodyWeight);
  const share = subtractLoad(load, shown) / weight;
  const nothing = subtractLoad(shown, shown);
  const added =
    shown < nothing
      ? said.minus(loadWords(subtractLoad(nothing, shown), show))
      : said.plus(loadWords(addLoads(shown), show));
  return said.sum.body(formatNumber(share, 3), loadWords(weight, show), added, total);
}

function stepOf({ show }: GymInput, { load, up }: Chosen): readonly string[] {
  if (up?.kind !== 'step') return [];
  const [to, from] = [up.to.load, load.load].map((one) => loadWords(one, show));
  return [said.step(to ?? '', from ?? '', percentWords(up.percent))];
}
