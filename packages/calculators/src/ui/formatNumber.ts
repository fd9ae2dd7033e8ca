/** A number for people: at most `decimals` decimals, no trailing zeros, a true minus sign. */
export function formatNumber(value: number, decimals = 2): string {
  const rounded = Number(value.toFixed(decimals));
  return String(rounded === 0 ? 0 : rounded).replace('-', '\u2212');
}
