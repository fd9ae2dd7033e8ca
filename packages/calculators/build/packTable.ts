/** One character a row: the place of its value, from here on. A space stands for none. */
const FIRST = 35;
const MOST = 90;

/**
 * A table as an expression that makes it again, without the columns that nobody reads: what many
 * rows share is written once. Values must be plain data.
 */
export function packTable(
  rows: readonly object[],
  unread: ReadonlySet<string>,
  write: (value: unknown) => string,
): string {
  const names = columnsOf(rows).filter((name) => !unread.has(name));
  const columns = names.map((name) => {
    const cells = column(rows.map((row) => Reflect.get(row, name)));
    return `${JSON.stringify(name)}:${write(cells)}`;
  });
  return `unpack(${rows.length}, {${columns.join(',')}})`;
}

/** The names of all values that rows have. */
export function columnsOf(rows: readonly object[]): readonly string[] {
  return [...new Set(rows.flatMap((row) => Object.keys(row)))];
}

function column(cells: readonly unknown[]): readonly unknown[] {
  const texts = cells.map((cell) => JSON.stringify(cell));
  const values = [...new Set(texts)].filter((text) => text !== undefined);
  if (values.length > MOST && !texts.includes(undefined as never)) return [cells];
  const codes = texts.map((text) => (text === undefined ? ' ' : codeOf(values.indexOf(text))));
  return [values.map((text) => JSON.parse(text)), codes.join('')];
}

/** A character that JSON writes as itself. */
function codeOf(place: number): string {
  const code = FIRST + place;
  return String.fromCharCode(code < 92 ? code : code + 1);
}

/** The function that such an expression calls. */
export const unpackSource = `
const unpack = (count, columns) => Array.from({ length: count }, (_, row) => {
  const made = {};
  for (const [name, [values, codes]] of Object.entries(columns)) {
    const code = codes?.charCodeAt(row);
    if (code === 32) continue;
    made[name] = values[codes ? code - ${FIRST} - (code > 92 ? 1 : 0) : row];
  }
  return made;
});
`;
