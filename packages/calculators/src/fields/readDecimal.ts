/**
 * A decimal as people type it: comma or point, a true minus sign, spaces around it.
 * `null` when it is no single plain number; never a guess about thousands marks.
 */
export function readDecimal(text: string): number | null {
  const plain = text.trim().replace('\u2212', '-').replace(',', '.');
  return /^[+-]?(\d{1,12}(\.\d{0,9})?|\.\d{1,9})$/.test(plain) ? Number(plain) : null;
}
