/** Letters of a word that are compared: more than any candidate has, and few enough to be quick. */
const MOST_LETTERS = 100;

/** The candidates nearest to `word` by edits (insert, delete, replace a letter), nearest first, then by alphabet. */
export function closestWords(
  word: string,
  candidates: readonly string[],
  count: number,
): readonly string[] {
  return candidates
    .toSorted()
    .map((candidate) => ({
      candidate,
      edits: editDistance(word.slice(0, MOST_LETTERS), candidate),
    }))
    .sort((a, b) => a.edits - b.edits)
    .slice(0, count)
    .map(({ candidate }) => candidate);
}

function editDistance(a: string, b: string): number {
  let previous = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 0; i < a.length; i++) {
    const row = [i + 1];
    for (let j = 0; j < b.length; j++) {
      const replaced = (previous[j] ?? 0) + (a[i] === b[j] ? 0 : 1);
      row.push(Math.min(replaced, (previous[j + 1] ?? 0) + 1, (row[j] ?? 0) + 1));
    }
    previous = row;
  }
  return previous[b.length] ?? 0;
}
