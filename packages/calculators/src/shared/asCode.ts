/** Plain data as TypeScript: what fits on a line stands on one. */
export function asCode(value: unknown, indent = ''): string {
  const line = codeLine(value);
  if (line.length + indent.length <= 72 || typeof value !== 'object' || value === null) return line;
  const inner = `${indent}  `;
  const items = Array.isArray(value)
    ? value.map((item) => `${inner}${asCode(item, inner)},`)
    : Object.entries(value).map(([key, item]) => `${inner}${key}: ${asCode(item, inner)},`);
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  return `${open}\n${items.join('\n')}\n${indent}${close}`;
}

/** Plain data as TypeScript on one line. */
export function codeLine(value: unknown): string {
  if (typeof value === 'string') return `'${value.replace(/[\\']/g, '\\$&')}'`;
  if (Array.isArray(value)) return `[${value.map(codeLine).join(', ')}]`;
  if (typeof value === 'object' && value !== null) {
    const pairs = Object.entries(value).map(([key, item]) => `${key}: ${codeLine(item)}`);
    return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
  }
  return String(value);
}
