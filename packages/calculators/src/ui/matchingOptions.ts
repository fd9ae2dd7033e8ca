type Option = { readonly id: string; readonly label: string };

/**
 * The options that have every typed word, in any order and anywhere in a word; those that begin
 * with what was typed come first.
 */
export function matchingOptions<One extends Option>(
  options: readonly One[],
  typed: string,
): readonly One[] {
  const plain = (text: string) => text.toLowerCase().replaceAll('-', ' ').trim();
  const said = plain(typed);
  const found = options.filter(({ label }) =>
    said.split(/\s+/).every((word) => plain(label).includes(word)),
  );
  const begins = ({ label }: Option) => Number(plain(label).startsWith(said));
  return found.toSorted((a, b) => begins(b) - begins(a));
}
