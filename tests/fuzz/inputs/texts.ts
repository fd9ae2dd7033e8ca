import { pieces } from './nasty.ts';
import type { Random } from './Random.ts';

/** Anything at all: a few pieces, now and then one of them many thousand times over. */
export function anyText(random: Random): string {
  if (random.oneIn(600)) {
    const long = random.pick(pieces).repeat(random.below(20_000));
    return `${random.pick(pieces)}${long}${random.pick(pieces)}`;
  }
  return several(random, 6, () =>
    random.oneIn(4) ? String.fromCodePoint(random.below(0x2fff)) : random.pick(pieces),
  ).join('');
}

/** A text with some of it lost, doubled, moved or replaced. */
export function damaged(text: string, random: Random): string {
  let result = text;
  for (let times = 1 + random.below(3); times > 0; times -= 1) {
    const from = random.below(result.length + 1);
    const to = Math.min(result.length, from + random.below(random.pick([2, 6, 40])));
    const part = result.slice(from, to);
    const put = random.pick([
      '',
      part + part,
      anyText(random),
      random.pick(pieces),
      part.toUpperCase(),
    ]);
    result = result.slice(0, from) + put + result.slice(to);
  }
  return result;
}

/** A list of 1 to `most` things. */
export function several<Item>(random: Random, most: number, make: () => Item): readonly Item[] {
  return Array.from({ length: 1 + random.below(most) }, make);
}

/** Digits with a mark between thousands or decimals, or neither. */
export function numberText(random: Random): string {
  const digits = () => String(random.below(random.pick([10, 100, 1000, 1_000_000])));
  const mark = random.pick(['.', ',', "'", ' ', '\u00a0', '.000.', '..']);
  return random.pick([digits(), digits() + mark + digits(), mark + digits(), digits() + mark]);
}

/** A load as somebody might write it. */
export function loadText(random: Random): string {
  const sign = random.pick(['', '', '', '-', '−', '+', '≈', '~ ']);
  const unit = random.pick(['', 'kg', ' kg', 'KG.', 'kilos', 'lb', ' lbs', '#', 'pounds', 'stone']);
  return sign + numberText(random) + unit;
}

/** A tempo as somebody might write it. */
export function tempoText(random: Random): string {
  const separator = random.pick(['', '-', '-', ':', '/', ' ', '.', ',', ' - ']);
  const part = () =>
    random.oneIn(5)
      ? random.pick(['X', 'x', '×'])
      : random.pick([String(random.below(12)), numberText(random)]);
  return several(random, 5, part).join(separator);
}

/** A date as somebody might write it. */
export function dateText(random: Random): string {
  const [year, month, day] = [1990 + random.below(60), random.below(14), random.below(33)].map(
    (part) => (random.oneIn(3) ? String(part) : String(part).padStart(2, '0')),
  );
  const mark = random.pick(['-', '-', '.', '/', ' ']);
  return random
    .pick([
      [year, month, day],
      [year, month, day],
      [day, month, year],
      [month, day, year?.slice(2)],
    ])
    .join(mark);
}
