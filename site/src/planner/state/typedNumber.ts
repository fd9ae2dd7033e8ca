/** What was typed as a number where that is how the number is written; else the text as it is. */
export function typedNumber(text: string): number | string {
  return String(Number(text)) === text && Number.isFinite(Number(text)) ? Number(text) : text;
}
