/** Inputs that are a little smaller than this one, the smallest first. */
export function* smaller(input: unknown): Generator<unknown> {
  if (typeof input === 'string') {
    for (let length = input.length; length >= 1; length = Math.floor(length / 2)) {
      for (let from = 0; from < input.length; from += length) {
        yield input.slice(0, from) + input.slice(from + length);
      }
    }
  } else if (Array.isArray(input)) {
    for (const at of input.keys()) yield input.toSpliced(at, 1);
    for (const [at, item] of input.entries()) {
      for (const less of smaller(item)) yield input.with(at, less);
    }
  } else if (typeof input === 'object' && input !== null) {
    const entries = Object.entries(input);
    for (const [name] of entries) yield Object.fromEntries(entries.filter(([of]) => of !== name));
    for (const [name, value] of entries) {
      for (const less of smaller(value)) {
        yield Object.fromEntries(entries.map(([of, old]) => [of, of === name ? less : old]));
      }
    }
  }
}

/** The smallest input found that `fails` still, in a limited number of tries. */
export async function shrink(
  input: unknown,
  fails: (input: unknown) => Promise<boolean>,
  tries = 2000,
): Promise<unknown> {
  let best = input;
  let left = tries;
  search: while (left > 0) {
    for (const less of smaller(best)) {
      left -= 1;
      if (left <= 0) break;
      if (await fails(less)) {
        best = less;
        continue search;
      }
    }
    break;
  }
  return best;
}
